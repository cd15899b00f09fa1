import { type Desk, editPlanned, type Outcome, setPlanned } from '../../actions';
import { type BodyOf, nameOf } from '../../engine/record';
import type { YearAtHand } from './useYear';

/** The plan of the year as it was, with what is said anew. */
export const keepYear = (
  desk: Desk,
  { plan, year }: Pick<YearAtHand, 'plan' | 'year'>,
  patch: Partial<BodyOf<'yearPlan'>>,
): Promise<Outcome> =>
  plan
    ? editPlanned(desk, 'yearPlan', plan.thing, patch)
    : setPlanned(desk, 'yearPlan', nameOf.yearPlan(desk.collection, year), { year, works: [], ...patch });
