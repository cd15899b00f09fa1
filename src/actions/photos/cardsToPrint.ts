import type { Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { thingsOfKind } from '../theThing';

/** A work with what it has cards for. */
export interface CardsOfWork {
  readonly sculpture: Thing<'sculpture'>;
  /** In walking order. */
  readonly stations: readonly Thing<'station'>[];
  /** Best first. */
  readonly sentinels: readonly Thing<'sentinel'>[];
  /** Letters of zones by their names. */
  readonly letters: ReadonlyMap<string, string>;
}

/** Every work that has a station or a sentinel square, by number. */
export const cardsToPrint = (desk: Desk): Question<readonly CardsOfWork[]> =>
  ask(
    desk,
    'cards to print',
    () => desk.store.changes(),
    async () => {
      const [works, stations, sentinels, zones] = await Promise.all([
        thingsOfKind(desk, 'sculpture'),
        thingsOfKind(desk, 'station'),
        thingsOfKind(desk, 'sentinel'),
        thingsOfKind(desk, 'zone'),
      ]);
      const letters = new Map(zones.map(({ thing, body }) => [thing, body.letter]));
      const numbers = new Intl.Collator('en', { numeric: true });
      return works
        .map((sculpture) => ({
          sculpture,
          stations: stations
            .filter(({ body }) => body.sculpture === sculpture.thing)
            .sort((a, b) => a.body.order - b.body.order),
          sentinels: sentinels
            .filter(({ body }) => body.sculpture === sculpture.thing)
            .sort((a, b) => (a.body.which < b.body.which ? -1 : a.body.which > b.body.which ? 1 : 0)),
          letters,
        }))
        .filter((work) => work.stations.length + work.sentinels.length > 0)
        .sort((a, b) => numbers.compare(a.sculpture.body.number, b.sculpture.body.number));
    },
  );
