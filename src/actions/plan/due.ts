import type { ZoneHolds } from '../../engine/hold';
import type { Thing } from '../../engine/record';
import {
  type AllDue,
  type Due,
  type DueKind,
  dueAfterTreatment,
  dueOfRecord,
  dueOfTripwires,
  duePlanned,
  dueStanding,
  type Recall,
  recallList,
} from '../../engine/watch';
import type { Desk, Question } from '../desk';
import { adviceFound, bringUpToDate, firstFound, isBehind } from '../questions/figures';
import { live } from '../questions/live';
import { thingsOfKind } from '../theThing';
import { livingWorks, plannedHere } from './plannedHere';
import { tripwiresNow } from './tripwires';

/** All that is due, from every part of the record, in one list. */
export interface DueThings extends AllDue {
  /** Whom to call back under a warranty that runs. */
  readonly recall: readonly Recall[];
  readonly works: readonly Thing<'sculpture'>[];
  /** Letter and name of each zone, by thing name. */
  readonly zones: ReadonlyMap<string, Thing<'zone'>['body']>;
  readonly tasks: readonly Thing<'task'>[];
  readonly sitePlan: Thing<'sitePlan'> | null;
  /** Works whose figures are still being worked out: what their surface asks for is not in it yet. */
  readonly workingOut: number;
}

const kinds = [
  'quote',
  'bid',
  'campaign',
  'decision',
  'groundsAgreement',
  'product',
  'move',
  'task',
  'incident',
  'hotDay',
  'gift',
  'yearPlan',
] as const satisfies readonly DueKind[];

/** Everything due. What the surface asks for comes from what was worked out beside the page; until it is, the rest stands already. */
export const dueThings = (desk: Desk): Question<DueThings> =>
  live(desk, 'due things', async () => {
    const today = desk.today();
    const works = await livingWorks(desk);
    const names = new Set(works.map(({ thing }) => thing));
    const [lists, rest, zones, tripwires] = await Promise.all([
      plannedHere(desk, kinds, names),
      plannedHere(desk, ['dueAnswered', 'sitePlan'], names),
      thingsOfKind(desk, 'zone'),
      tripwiresNow(desk),
    ]);
    const due: Due[] = [...duePlanned(lists, today), ...dueOfTripwires(tripwires.standing)];
    const holds = new Map<string, readonly ZoneHolds[]>();
    let workingOut = 0;
    let behind = await isBehind(desk);
    for (const { thing } of works) {
      const [first, advice] = await Promise.all([firstFound(desk, thing), adviceFound(desk, thing)]);
      if (!first || !advice) {
        workingOut += 1;
        continue;
      }
      if (!advice.right) behind = true;
      const { record } = first.value;
      holds.set(thing, first.value.holds);
      const known = { record, holds: first.value.holds, advice: advice.value };
      due.push(...dueOfRecord(known, { yearPlans: lists.yearPlan, moves: lists.move, today }));
      due.push(...dueAfterTreatment(record, lists.campaign, today));
    }
    const value: DueThings = {
      ...dueStanding(due, rest.dueAnswered, today),
      recall: recallList(lists.campaign, (work) => holds.get(work) ?? [], today),
      works,
      zones: new Map(zones.map(({ thing, body }) => [thing, body])),
      tasks: lists.task,
      sitePlan: rest.sitePlan[0] ?? null,
      workingOut,
    };
    return { value, after: workingOut > 0 || behind ? () => bringUpToDate(desk) : undefined };
  });
