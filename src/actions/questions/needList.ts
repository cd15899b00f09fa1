import { type NeedOf, type OrderOfNeed, orderOfNeed } from '../../engine/condition';
import type { Desk, Question } from '../desk';
import { thingsOfKind } from '../theThing';
import { bringUpToDate, isBehind, needFound } from './figures';
import { live } from './live';

/** The works' latest rounds in order of need. */
export interface Need {
  readonly order: OrderOfNeed;
  /** The latest round of each work that has one: record (of other rounds only their days), score and classes. */
  readonly needs: readonly NeedOf[];
  /** Works whose figures are still being worked out; until they are, the order is the last whole one. */
  readonly workingOut: number;
  /** Works without any round yet. */
  readonly noRound: readonly string[];
}

const none: Omit<Need, 'workingOut'> = {
  order: { people: [], zones: [], sculptures: [], notRanked: [] },
  needs: [],
  noRound: [],
};

const lastWhole = new WeakMap<object, { readonly stamp: string; readonly need: Need }>();

export const needList = (desk: Desk): Question<Need> =>
  live(desk, 'needs', async () => {
    const works = (await thingsOfKind(desk, 'sculpture')).map(({ thing }) => thing);
    const kept = await Promise.all(works.map(async (work) => ({ work, found: await needFound(desk, work) })));
    const behind = kept.filter(({ found }) => !found?.right).length;
    const last = lastWhole.get(desk.store);
    const after = behind > 0 || (await isBehind(desk)) ? () => bringUpToDate(desk) : undefined;
    if (behind > 0) return { value: { ...(last?.need ?? none), workingOut: behind }, after };
    const stamp = kept.map(({ work, found }) => `${work} ${found?.stamp}`).join(' ');
    if (last?.stamp === stamp) return { value: last.need, after };
    const needs = kept.flatMap(({ found }) => found?.value ?? []);
    const noRound = kept.filter(({ found }) => found && found.value === null).map(({ work }) => work);
    const need = { order: orderOfNeed(needs), needs, workingOut: 0, noRound };
    lastWhole.set(desk.store, { stamp, need });
    return { value: need, after };
  });
