import type { DueThings } from '../../actions';
import type { DueStanding } from '../../engine/watch';
import { orderOfVisits } from '../../engine/year';

/** What is due at one stop of a walk; no work where it is of none. */
export interface Stop {
  readonly work: DueThings['works'][number] | undefined;
  readonly due: readonly DueStanding[];
}

const byNumber = new Intl.Collator('en', { numeric: true });

/**
 * Work by work, in the order of the site plan or else by number: what may be done on a walk within a month. Works with nothing due
 * are no stop, and the walk does not go round by them.
 */
export const byWalk = ({ due, works, sitePlan }: Pick<DueThings, 'due' | 'works' | 'sitePlan'>): readonly Stop[] => {
  const near = due.filter(({ when }) => when !== 'later');
  const stops = works
    .filter(({ thing }) => near.some(({ sculpture }) => sculpture === thing))
    .sort((a, b) => byNumber.compare(a.body.number, b.body.number));
  const spots = new Map(sitePlan?.body.spots.map(({ work, x, y }) => [work, { x, y }]) ?? []);
  const names = stops.map(({ thing }) => thing);
  const order = spots.size > 0 ? orderOfVisits(names, spots, sitePlan?.body.start, wideAsHigh).order : names;
  const rest = near.filter(({ sculpture }) => sculpture === null);
  return [
    ...order.map((name) => ({
      work: stops.find(({ thing }) => thing === name),
      due: near.filter(({ sculpture }) => sculpture === name),
    })),
    ...(rest.length > 0 ? [{ work: undefined, due: rest }] : []),
  ];
};

/** Height of the plan over its width; the picture's own is not read for a list. */
const wideAsHigh = 1;
