import { scoreFinding } from '../condition';
import { type ActiveArea, activityOf, kindOf, originOf, type Scale } from '../trade';
import type { FindingBody, Observation } from './observation';
import { movedBy, type Rating, slopeAt } from './rating';
import { noSum, noWays, type Sum, type Ways } from './sums';
import type { SeriesPair } from './zonePair';

/** Half a step of the numeric slope, on the logit. */
const half = 0.005;

const withCoverage = (body: FindingBody, value: number): FindingBody => ({
  ...body,
  coverage: { value, low: value, high: value, method: body.coverage?.method ?? 'ladder' },
});

/** -ln(1 - loss): what a finding adds to -ln Z of its zone. */
const burden = (body: FindingBody, scale: Scale): number => -Math.log1p(-scoreFinding(body, scale).loss);

interface Ends {
  readonly earlier: Observation;
  readonly later: Observation;
  readonly earlierBody: FindingBody;
  readonly laterBody: FindingBody;
}

/** Both observations with a body each: what was not there takes the steps of what the other round saw. */
const endsOf = ({ earlier, later, standing }: SeriesPair): Ends | undefined => {
  const [a, b] = [
    earlier?.state === 'seen' ? earlier.body : undefined,
    later?.state === 'seen' ? later.body : undefined,
  ];
  const either = a ?? b;
  return standing.state === 'judged' && earlier && later && either
    ? { earlier, later, earlierBody: a ?? either, laterBody: b ?? either }
    : undefined;
};

const sameSteps = (a: FindingBody, b: FindingBody): boolean =>
  a.severity === b.severity && a.activity === b.activity && a.count === b.count;

/** The three ways of telling a series, from how one pair of bodies is summed; without a step between them they are one. */
const waysOf = ({ earlierBody, laterBody }: Ends, sum: (earlier: FindingBody, later: FindingBody) => Sum): Ways => {
  const asTold = sum(earlierBody, laterBody);
  if (sameSteps(earlierBody, laterBody)) return { asTold, oldSteps: asTold, newSteps: asTold };
  return { asTold, oldSteps: sum(earlierBody, earlierBody), newSteps: sum(laterBody, laterBody) };
};

const burdenByArea =
  (earlier: Rating, later: Rating, scale: Scale) =>
  (earlierBody: FindingBody, laterBody: FindingBody): Sum => {
    const at = (body: FindingBody, p: number) => burden(withCoverage(body, p), scale);
    const slope = (body: FindingBody, p: number) =>
      (at(body, movedBy(p, half)) - at(body, movedBy(p, -half))) / (2 * half);
    const [slopeEarlier, slopeLater] = [slope(earlierBody, earlier.p), slope(laterBody, later.p)];
    return {
      earlier: at(earlierBody, earlier.p),
      later: at(laterBody, later.p),
      ownEarlier: (slopeEarlier * earlier.sd) ** 2,
      ownLater: (slopeLater * later.sd) ** 2,
      slopeEarlier: slopeEarlier * earlier.byEye,
      slopeLater: slopeLater * later.byEye,
    };
  };

/** What one series adds to -ln Z of its zone in both rounds. "Nothing found" counts as the little it may have missed. */
export const burdenWays = (pair: SeriesPair, scale: Scale): Ways => {
  const ends = endsOf(pair);
  if (!ends) return noWays;
  const { earlier, later, earlierBody, laterBody } = ends;
  if (kindOf(pair.kind)?.measure === 'area' && earlier.rating && later.rating) {
    return waysOf(ends, burdenByArea(earlier.rating, later.rating, scale));
  }
  const a = earlier.state === 'seen' ? burden(earlierBody, scale) : 0;
  const b = later.state === 'seen' ? burden(laterBody, scale) : 0;
  // All of such a difference is a step: with the steps held there is none.
  return {
    asTold: { ...noSum, earlier: a, later: b },
    oldSteps: { ...noSum, earlier: a, later: a },
    newSteps: { ...noSum, earlier: b, later: b },
  };
};

const counted = (body: FindingBody): boolean =>
  originOf(body.origin).hazard === 'kind' && !activityOf(body.activity).quiet;

/** The share of the zone one side adds, with its error; nothing found is 0 with the error of what may have been missed. */
const activeSide = (o: Observation, rating: Rating, body: FindingBody) => {
  if (!counted(body)) return { value: 0, own: 0, slope: 0 };
  const slope = slopeAt(rating.p);
  const value = o.state === 'seen' ? (o.body?.coverage?.value ?? 0) : 0;
  return { value, own: (slope * rating.sd) ** 2, slope: slope * rating.byEye };
};

/** Share of the zone one series adds to an active area in both rounds. */
export const activeWays = (pair: SeriesPair, what: ActiveArea): Ways => {
  const ends = kindOf(pair.kind)?.countsAs === what ? endsOf(pair) : undefined;
  const [first, second] = [ends?.earlier.rating, ends?.later.rating];
  if (!ends || !first || !second) return noWays;
  return waysOf(ends, (earlierBody, laterBody) => {
    const a = activeSide(ends.earlier, first, earlierBody);
    const b = activeSide(ends.later, second, laterBody);
    return {
      earlier: a.value,
      later: b.value,
      ownEarlier: a.own,
      ownLater: b.own,
      slopeEarlier: a.slope,
      slopeLater: b.slope,
    };
  });
};
