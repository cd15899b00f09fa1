import type { Money } from '../money';
import type { Weighed } from './weigh';

/** Where the best choice changes: from this budget on so much is left undone. */
export interface CurvePoint {
  readonly budget: Money;
  /** m2 of loss left undone. */
  readonly undone: number;
}

const pointAt = ({ currency, front, steps, unit }: Weighed, at: number): CurvePoint => ({
  budget: { minor: front[at]?.cost ?? 0, currency },
  undone: (steps - (front[at]?.gain ?? 0)) * unit,
});

/** How what is left undone changes with the budget: every place where it does, or about `most` of them, the ends always. */
export const curveOf = (weighed: Weighed, most = 200): readonly CurvePoint[] => {
  const last = weighed.front.length - 1;
  const count = Math.min(most, last + 1);
  const places = Array.from({ length: count }, (_, i) => (count < 2 ? 0 : Math.round((i * last) / (count - 1))));
  return places.map((at) => pointAt(weighed, at));
};

/** The step up from a budget that takes away most for its money; undefined where more money takes nothing more away. */
export const nextStep = (
  weighed: Weighed,
  budget: Money,
): { readonly more: Money; readonly taken: number } | undefined => {
  const now = weighed.front.findLast(({ cost }) => cost <= budget.minor);
  let best: { readonly worth: number; readonly more: Money; readonly taken: number } | undefined;
  for (const { cost, gain } of weighed.front) {
    if (cost <= budget.minor) continue;
    const more = cost - budget.minor;
    const worth = (gain - (now?.gain ?? 0)) / more;
    if (!best || worth > best.worth) {
      best = {
        worth,
        more: { minor: more, currency: weighed.currency },
        taken: (gain - (now?.gain ?? 0)) * weighed.unit,
      };
    }
  }
  return best;
};
