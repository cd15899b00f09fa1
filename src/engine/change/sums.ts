/**
 * A figure of both rounds with what its difference needs; it rises when things get worse. Figures of series add up to a zone's,
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
}

/**
 * The same figure three ways: as both rounds told it; with the severity, activity and count of the earlier round in both; with
 * those of the later round in both. Only coverage has a known error: what holds in all three ways rests on coverage.
 */
export interface Ways {
  readonly asTold: Sum;
  readonly oldSteps: Sum;
  readonly newSteps: Sum;
}

export const noSum: Sum = { earlier: 0, later: 0, ownEarlier: 0, ownLater: 0, slopeEarlier: 0, slopeLater: 0 };
export const noWays: Ways = { asTold: noSum, oldSteps: noSum, newSteps: noSum };

const added = (a: Sum, b: Sum): Sum => ({
  earlier: a.earlier + b.earlier,
  later: a.later + b.later,
  ownEarlier: a.ownEarlier + b.ownEarlier,
  ownLater: a.ownLater + b.ownLater,
  slopeEarlier: a.slopeEarlier + b.slopeEarlier,
  slopeLater: a.slopeLater + b.slopeLater,
});

export const addUp = (all: readonly Ways[]): Ways =>
  all.reduce(
    (a, b) => ({
      asTold: added(a.asTold, b.asTold),
      oldSteps: added(a.oldSteps, b.oldSteps),
      newSteps: added(a.newSteps, b.newSteps),
    }),
    noWays,
  );

export const eachWay = (ways: Ways, change: (sum: Sum) => Sum): Ways => ({
  asTold: change(ways.asTold),
  oldSteps: change(ways.oldSteps),
  newSteps: change(ways.newSteps),
});

export const times = (ways: Ways, k: number): Ways =>
  eachWay(ways, (sum) => ({
    earlier: k * sum.earlier,
    later: k * sum.later,
    ownEarlier: k * k * sum.ownEarlier,
    ownLater: k * k * sum.ownLater,
    slopeEarlier: k * sum.slopeEarlier,
    slopeLater: k * sum.slopeLater,
  }));

const lost = (c: number): number => 100 * (1 - Math.exp(-c));
const lostSlope = (c: number): number => 100 * Math.exp(-c);

/** Points lost, 100 - Z, from c = -ln Z: the same figure on the scale of the index, its errors carried by the slope. */
export const pointsLost = (ways: Ways): Ways =>
  eachWay(ways, (c) => ({
    earlier: lost(c.earlier),
    later: lost(c.later),
    ownEarlier: lostSlope(c.earlier) ** 2 * c.ownEarlier,
    ownLater: lostSlope(c.later) ** 2 * c.ownLater,
    slopeEarlier: lostSlope(c.earlier) * c.slopeEarlier,
    slopeLater: lostSlope(c.later) * c.slopeLater,
  }));
