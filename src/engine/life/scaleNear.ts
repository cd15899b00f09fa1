import { likelihoodAt, type Prepared } from './weibullLikelihood';

/** Top of the likelihood over log(scale), the shape held: near enough for a draw or a step of a search. */
export const scaleNear = (rows: readonly Prepared[], shape: number, start: number) => {
  let m = start;
  let at = likelihoodAt(rows, shape, m);
  for (let i = 0; i < 60; i++) {
    const stride = 3 / shape;
    const newton = at.bend < 0 ? -at.slope / at.bend : Number.NaN;
    const wanted = Number.isFinite(newton) ? newton : Math.sign(at.slope) * stride;
    let step = Math.max(-stride, Math.min(stride, wanted));
    let next = likelihoodAt(rows, shape, m + step);
    for (; next.value < at.value - 1e-9 && Math.abs(step) > 1e-7; step /= 2)
      next = likelihoodAt(rows, shape, m + step / 2);
    m += step;
    at = next;
    if (Math.abs(step) < 1e-6) break;
  }
  return { m, value: at.value };
};
