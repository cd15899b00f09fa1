import { stateOfAll, stateOfThings } from '../../device/stateOfThings';
import type { PaperSource, WorkOnPaper } from '../../engine/reckoning';
import type { Current } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { thingsOfKind } from '../theThing';
import { bringUpToDate, isBehind } from './figures';
import { livesKept, ofWork } from './insights';
import { live } from './live';
import { recordOf } from './records';

/** What papers are made from, and how many works have figures still to come. */
export interface PaperSourceAsked {
  readonly source: PaperSource;
  readonly workingOut: number;
}

/**
 * Everything a paper can be made from: of one work, or of all where `work` is left out. Null where that work is not here. All of it is
 * read, so it is asked for by the screens of papers only.
 */
export const paperSource = (desk: Desk, work?: string): Question<PaperSourceAsked | null> =>
  live<PaperSourceAsked | null>(desk, `papers ${work ?? ''}`, async () => {
    const all = (await thingsOfKind(desk, 'sculpture')).map(({ thing }) => thing);
    const wanted = work === undefined ? all : all.filter((thing) => thing === work);
    if (work !== undefined && wanted.length === 0) return { value: null };
    const works: WorkOnPaper[] = [];
    let workingOut = 0;
    for (const thing of wanted) {
      const [record, within, figures] = await Promise.all([
        recordOf(desk, thing),
        desk.store.within(thing),
        ofWork(desk, thing),
      ]);
      if (!figures.right) workingOut++;
      works.push({ record, within: living(within), state: stateOfThings(within), figures: figures.value });
    }
    const collection = (await desk.store.current(desk.collection))?.lead.body ?? {};
    const around = living(await desk.store.within(desk.collection));
    const aroundState = stateOfThings(around);
    const source: PaperSource = {
      collection: desk.collection,
      name: String(collection.name ?? ''),
      invented: desk.invented,
      today: desk.today(),
      works: works.sort(byNumber),
      around,
      lives: await livesKept(desk),
      aroundState,
      state: stateOfAll([aroundState, ...works.map(({ state }) => state)]),
    };
    return {
      value: { source, workingOut },
      after: workingOut > 0 || (await isBehind(desk)) ? () => bringUpToDate(desk) : undefined,
    };
  });

const living = (currents: readonly Current[]): readonly Current[] => currents.filter(({ gone }) => !gone);

const byNumber = (a: WorkOnPaper, b: WorkOnPaper): number => (numberOf(a) < numberOf(b) ? -1 : 1);
const numberOf = ({ record: { sculpture } }: WorkOnPaper): string => `${sculpture.body.number}\n${sculpture.thing}`;
