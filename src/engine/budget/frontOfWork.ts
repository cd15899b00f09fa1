import { type Choice, frontOf, undominated, type Way } from './front';
import type { Price, ZoneWay } from './waysOfZone';

/** One way to treat a whole work: what is paid once for the work, and what is done in its zones. */
export interface WorkWay extends Way {
  readonly sculpture: string;
  /** Kinds of work paid once here: the lift, the scaffold, the day it takes to come. */
  readonly once: readonly { readonly type: string; readonly cost: number }[];
  readonly zones: Choice<ZoneWay>;
}

/** What a kind of work costs once for each work, whatever the number of its zones; nothing where it has no such price. */
const onceOf = (prices: readonly Price[], type: string): number =>
  prices.filter((price) => price.type === type && price.per === 'work').reduce((sum, { each }) => sum + each.minor, 0);

/**
 * Every way to treat a work that no other beats: for each set of kinds of work that are paid once the zones are chosen anew, so that
 * what is paid once is weighed against all it makes possible.
 */
export const frontOfWork = (
  sculpture: string,
  zones: readonly (readonly ZoneWay[])[],
  prices: readonly Price[],
): readonly WorkWay[] => {
  const used = [...new Set(zones.flat().flatMap(({ types }) => types))];
  const paidOnce = used.map((type) => ({ type, cost: onceOf(prices, type) })).filter(({ cost }) => cost > 0);
  const sets = Array.from({ length: 2 ** paidOnce.length }, (_, set) => paidOnce.filter((_o, i) => set & (1 << i)));
  const ways = sets.flatMap((once) => {
    const shut = paidOnce.filter((one) => !once.includes(one)).map(({ type }) => type);
    const open = zones.map((all) => all.filter(({ types }) => !types.some((type) => shut.includes(type))));
    const more = once.reduce((sum, { cost }) => sum + cost, 0);
    return frontOf(open).map((choice) => ({
      sculpture,
      once,
      zones: choice,
      cost: choice.cost + more,
      gain: choice.gain,
    }));
  });
  return undominated(ways);
};
