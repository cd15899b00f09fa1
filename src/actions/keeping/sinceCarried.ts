import type { BodyOf, Entry } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { rememberedVersion } from '../remembered';
import { type CarriedRow, carriedRows } from './carriedOut';

/** What lies on this device only, as far as this device knows. */
export interface SinceCarried {
  /** Rounds ended, or changed after their end, since they last left. */
  readonly rounds: number;
  /** What left last, with all works; null where nothing ever did. */
  readonly last: CarriedRow | null;
  /** Everything that left, the last first. */
  readonly rows: readonly CarriedRow[];
}

/** What was made here after it last left. By this device's own counter, so that a clock set wrong moves nothing. */
export const sinceCarried = (desk: Desk): Question<SinceCarried> =>
  ask(
    desk,
    'since carried',
    () => `${desk.store.changes()} ${rememberedVersion(desk)}`,
    async () => {
      const [rounds, rows] = await Promise.all([desk.store.ofKind('round'), carriedRows(desk)]);
      const ended = rounds.filter(({ lead }) => (lead.body as BodyOf<'round'>).ended !== undefined);
      return {
        rounds: ended.filter(({ lead }) => onlyHere(desk, lead, rows)).length,
        last: rows.find(({ sculptures }) => sculptures === undefined) ?? null,
        rows,
      };
    },
  );

/** Made here, and in nothing that left. What came from elsewhere is elsewhere. */
export const onlyHere = (desk: Desk, { device, n, within }: Entry, rows: readonly CarriedRow[]): boolean =>
  device === desk.store.device &&
  !rows.some((row) => row.device === device && n <= row.made && (row.sculptures?.includes(within) ?? true));
