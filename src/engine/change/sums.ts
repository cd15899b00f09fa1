/**
 * A figure of both rounds with what its difference needs: rises when things get worse. Figures of series add up to a zone's,
 * those of zones to the work's; own errors add as variances, shared ones as plain sums of slopes, so that they are added once.
 */
export interface Sum {
  readonly earlier: number;
  readonly later: number;
  /** Own error, variances. */
  readonly ownEarlier: number;
  readonly ownLater: number;
  /** What a shift of one on the logit, shared over the round, moves the figure. */
  readonly slopeEarlier: number;
  readonly slopeLater: number;
  /** Today's coverages with the severity, activity and count of then; and the coverages of then with those of now. */
  readonly laterInOldSteps: number;
  readonly earlierInNewSteps: number;
}

export const noSum: Sum = {
  earlier: 0,
  later: 0,
  ownEarlier: 0,
  ownLater: 0,
  slopeEarlier: 0,
  slopeLater: 0,
  laterInOldSteps: 0,
  earlierInNewSteps: 0,
};

export const addUp = (sums: readonly Sum[]): Sum =>
  sums.reduce(
    (a, b) => ({
      earlier: a.earlier + b.earlier,
      later: a.later + b.later,
      ownEarlier: a.ownEarlier + b.ownEarlier,
      ownLater: a.ownLater + b.ownLater,
      slopeEarlier: a.slopeEarlier + b.slopeEarlier,
      slopeLater: a.slopeLater + b.slopeLater,
      laterInOldSteps: a.laterInOldSteps + b.laterInOldSteps,
      earlierInNewSteps: a.earlierInNewSteps + b.earlierInNewSteps,
    }),
    noSum,
  );

export const times = (sum: Sum, k: number): Sum => ({
  earlier: k * sum.earlier,
  later: k * sum.later,
  ownEarlier: k * k * sum.ownEarlier,
  ownLater: k * k * sum.ownLater,
  slopeEarlier: k * sum.slopeEarlier,
  slopeLater: k * sum.slopeLater,
  laterInOldSteps: k * sum.laterInOldSteps,
  earlierInNewSteps: k * sum.earlierInNewSteps,
});

/** Points lost, 100 - Z, from c = -ln Z: the same figure on the scale of the index, its errors carried by the slope. */
export const pointsLost = (c: Sum): Sum => {
  const lost = (x: number) => 100 * (1 - Math.exp(-x));
  const slope = (x: number) => 100 * Math.exp(-x);
  return {
    earlier: lost(c.earlier),
    later: lost(c.later),
    ownEarlier: slope(c.earlier) ** 2 * c.ownEarlier,
    ownLater: slope(c.later) ** 2 * c.ownLater,
    slopeEarlier: slope(c.earlier) * c.slopeEarlier,
    slopeLater: slope(c.later) * c.slopeLater,
    laterInOldSteps: lost(c.laterInOldSteps),
    earlierInNewSteps: lost(c.earlierInNewSteps),
  };
};
