import type { Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { thingsOfKind } from '../theThing';

/** Where the app was left: a round not closed, and the zone that was on the screen. */
export interface UnderWay {
  readonly round: Thing<'round'>;
  readonly title: string;
  readonly zone: string | undefined;
}

const place = 'place in a round';

interface Place {
  readonly round: string;
  readonly zone: string;
}

/** The note that says which zone is on the screen, so that the app opens where it stopped. On this device only. */
export const placeNote = (round: string, zone: string) => ({ key: place, value: { round, zone } satisfies Place });

/** What was noted last: leaving a zone notes the next one with its answer, and to write it again would cost a flush. */
const noted = new WeakMap<Desk['store'], Place>();

export const rememberNoted = (desk: Desk, round: string, zone: string): void => {
  noted.set(desk.store, { round, zone });
};

export const noteZone = async (desk: Desk, round: string, zone: string): Promise<void> => {
  const { key, value } = placeNote(round, zone);
  const last = noted.get(desk.store);
  if (desk.store.mode !== 'writing' || (last?.round === round && last.zone === zone)) return;
  await desk.store.setMeta(key, value);
  rememberNoted(desk, round, zone);
};

/** Rounds begun and not closed, the one last worked on first. */
export const roundsUnderWay = (desk: Desk): Question<readonly UnderWay[]> =>
  ask(
    desk,
    'rounds under way',
    () => desk.store.changes(),
    async () => {
      const [rounds, works, last] = await Promise.all([
        thingsOfKind(desk, 'round'),
        thingsOfKind(desk, 'sculpture'),
        desk.store.meta<Place>(place),
      ]);
      const titles = new Map(works.map((work) => [work.thing, work.body.title]));
      return rounds
        .filter((round) => !round.body.ended && !round.body.partOf && titles.has(round.body.sculpture))
        .map((round) => ({
          round,
          title: titles.get(round.body.sculpture) ?? '',
          zone: last?.round === round.thing ? last.zone : undefined,
        }))
        .sort(
          (a, b) =>
            Number(b.zone !== undefined) - Number(a.zone !== undefined) || (a.round.thing < b.round.thing ? 1 : -1),
        );
    },
  );
