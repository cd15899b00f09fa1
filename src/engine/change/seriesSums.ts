import { scoreFinding } from '../condition';
import { type ActiveArea, activityOf, kindOf, originOf, type Scale } from '../trade';
import type { FindingBody, Observation } from './observation';
import { movedBy, nothingFound, type Rating, slopeAt } from './rating';
import { noSum, type Sum } from './sums';
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

const byArea = (
  earlier: Rating,
  later: Rating,
  earlierBody: FindingBody,
  laterBody: FindingBody,
  scale: Scale,
): Sum => {
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
    laterInOldSteps: at(earlierBody, later.p),
    earlierInNewSteps: at(laterBody, earlier.p),
  };
};

/** What one series adds to -ln Z of its zone in both rounds. "Nothing found" counts as the little it may have missed. */
export const burdenSum = (pair: SeriesPair, scale: Scale): Sum => {
  const ends = endsOf(pair);
  if (!ends) return noSum;
  const { earlier, later, earlierBody, laterBody } = ends;
  if (kindOf(pair.kind)?.measure === 'area' && earlier.rating && later.rating) {
    return byArea(earlier.rating, later.rating, earlierBody, laterBody, scale);
  }
  const a = earlier.state === 'seen' ? burden(earlierBody, scale) : 0;
  const b = later.state === 'seen' ? burden(laterBody, scale) : 0;
  // All of such a difference is a step: with the steps held it is nothing.
  return { ...noSum, earlier: a, later: b, laterInOldSteps: a, earlierInNewSteps: b };
};

const counted = (body: FindingBody): boolean =>
  originOf(body.origin).hazard === 'kind' && !activityOf(body.activity).quiet;

/** Share of the zone one series adds to an active area: nothing found is 0 there, with the error of what may have been missed. */
export const activeSum = (pair: SeriesPair, what: ActiveArea): Sum => {
  const ends = kindOf(pair.kind)?.countsAs === what ? endsOf(pair) : undefined;
  if (!ends?.earlier.rating || !ends.later.rating) return noSum;
  const { earlier, later, earlierBody, laterBody } = ends;
  const side = (o: Observation, rating: Rating, body: FindingBody) => {
    if (!counted(body)) return { value: 0, own: 0, slope: 0 };
    const seen = o.state === 'seen';
    const slope = slopeAt(seen ? rating.p : nothingFound.p);
    return {
      value: seen ? (o.body?.coverage?.value ?? 0) : 0,
      own: (slope * rating.sd) ** 2,
      slope: slope * rating.byEye,
    };
  };
  const a = side(earlier, ends.earlier.rating, earlierBody);
  const b = side(later, ends.later.rating, laterBody);
  return {
    earlier: a.value,
    later: b.value,
    ownEarlier: a.own,
    ownLater: b.own,
    slopeEarlier: a.slope,
    slopeLater: b.slope,
    laterInOldSteps: side(later, ends.later.rating, earlierBody).value,
    earlierInNewSteps: side(earlier, ends.earlier.rating, laterBody).value,
  };
};
