import type { BodyOf, Thing } from '../../engine/record';
import {
  type Lists,
  type TripwireFacts,
  type TripwireStanding,
  tripwireSortOf,
  tripwiresStanding,
} from '../../engine/watch';
import type { Desk, Question } from '../desk';
import { bringUpToDate, firstFound, isBehind } from '../questions/figures';
import { live } from '../questions/live';
import { recordOf } from '../questions/records';
import { thingsOfKind } from '../theThing';
import { livingWorks, plannedHere } from './plannedHere';

/** Every tripwire of the decisions that hold, and where it stands today. */
export interface TripwiresMet {
  readonly standing: readonly TripwireStanding[];
  /** Of them those that went, or perhaps went, and wait for an answer. */
  readonly open: readonly TripwireStanding[];
  /** Every zone, by thing name; empty while nothing is watched. */
  readonly zones: ReadonlyMap<string, BodyOf<'zone'>>;
  /** Works whose figures are still being worked out: their tripwires are not in it. */
  readonly workingOut: number;
}

type WatchLists = Lists<'decision' | 'tripwireAnswer' | 'quote' | 'fund' | 'gift'>;

const moneyOf = ({ quote, fund, gift }: WatchLists, sculpture: string | undefined) => {
  const of = <T extends { readonly body: { readonly sculpture?: string | undefined } }>(list: readonly T[]) =>
    list.filter(({ body }) => sculpture === undefined || body.sculpture === sculpture);
  const funds = of(fund);
  // A gift is of its fund, whatever work it names.
  const names = new Set(funds.map(({ thing }) => thing));
  return { quote: of(quote), fund: funds, gift: gift.filter(({ body }) => names.has(body.fund)) };
};

/** Figures come from what was worked out beside the page; the record itself is read only where a tripwire asks for all rounds. */
const factsOf = async (
  desk: Desk,
  sculpture: string,
  decisions: readonly Thing<'decision'>[],
  lists: WatchLists,
): Promise<TripwireFacts | undefined> => {
  const first = (await firstFound(desk, sculpture))?.value;
  if (!first) return undefined;
  const { record, score, clearlyWorse, holds } = first;
  const asksAll = decisions.some(({ body }) => body.tripwires.some(({ sort }) => tripwireSortOf(sort)?.allRounds));
  return {
    record: asksAll ? await recordOf(desk, sculpture) : record,
    score,
    clearlyWorse,
    holds,
    lists: moneyOf(lists, sculpture),
  };
};

/** Where all tripwires stand; nothing of a record is read while no decision has one. */
export const tripwiresNow = async (desk: Desk): Promise<TripwiresMet> => {
  const works = new Set((await livingWorks(desk)).map(({ thing }) => thing));
  const { decision } = await plannedHere(desk, ['decision'], works);
  const watched = decision.filter(({ body }) => body.replacedBy === undefined && body.tripwires.length > 0);
  if (watched.length === 0) return { standing: [], open: [], zones: new Map(), workingOut: 0 };
  const rest = await plannedHere(desk, ['tripwireAnswer', 'quote', 'fund', 'gift'], works);
  const lists: WatchLists = { decision, ...rest };
  const facts = new Map<string | undefined, TripwireFacts>([
    [undefined, { record: null, score: null, clearlyWorse: null, holds: [], lists: moneyOf(lists, undefined) }],
  ]);
  let workingOut = 0;
  for (const sculpture of new Set(watched.flatMap(({ body }) => body.sculpture ?? []))) {
    const own = watched.filter(({ body }) => body.sculpture === sculpture);
    const known = await factsOf(desk, sculpture, own, lists);
    if (known) facts.set(sculpture, known);
    else workingOut += 1;
  }
  const standing = tripwiresStanding(watched, rest.tripwireAnswer, (work) => facts.get(work), desk.today());
  const zones = new Map((await thingsOfKind(desk, 'zone')).map(({ thing, body }) => [thing, body]));
  return { standing, open: standing.filter(({ open }) => open), zones, workingOut };
};

/** What would change a mind, held against the record on each opening and after each change. */
export const tripwiresMet = (desk: Desk): Question<TripwiresMet> =>
  live(desk, 'tripwires', async () => {
    const value = await tripwiresNow(desk);
    const after = value.workingOut > 0 || (await isBehind(desk)) ? () => bringUpToDate(desk) : undefined;
    return { value, after };
  });
