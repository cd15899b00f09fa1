import { type NeedOf, type OrderOfNeed, orderOfNeed } from '../../engine/condition';
import type { Desk, Question } from '../desk';
import { thingsOfKind } from '../theThing';
import { keptFigures, workOut } from './keptSummaries';
import { live } from './live';

/** The works' latest rounds in order of need. */
export interface Need {
  readonly order: OrderOfNeed;
  /** The latest round of each work that has one: record (of that round only), score and classes. */
  readonly needs: readonly NeedOf[];
  /** Works whose figures are still being worked out. */
  readonly workingOut: number;
  /** Works without any round yet. */
  readonly noRound: readonly string[];
}

export const needList = (desk: Desk): Question<Need> =>
  live(desk, 'needs', async (again) => {
    const works = (await thingsOfKind(desk, 'sculpture')).map(({ thing }) => thing);
    const kept = await Promise.all(
      works.map(async (work) => ({ work, need: (await keptFigures(desk, work))?.second.need })),
    );
    const needs = kept.flatMap(({ need }) => (need ? [need] : []));
    const stale = kept.filter(({ need }) => need === undefined).map(({ work }) => work);
    const noRound = kept.filter(({ need }) => need === null).map(({ work }) => work);
    const value = { order: orderOfNeed(needs), needs, workingOut: stale.length, noRound };
    return { value, ...(stale.length > 0 ? { after: () => workOut(desk, stale, again) } : {}) };
  });
