import type { BodyOf, Reason } from '../record';
import { leastSquares, type Tie } from './fitLeast';
import { fewestPairs, fitNumbers, type PhotoFitKind } from './fitNumbers';
import { fitRefused, pairsRefused } from './fitRefused';
import { isRefused, type Refused } from './measured';
import { after, inverseOf, mapped, type PlaneMap, stretch } from './planeMap';
import { aspectOf, type Point, type Size } from './point';
import { boundsOf } from './polygon';
import { because } from './reasonCodes';

/** One spot of the work on both pictures, fractions of each. */
export interface Pair {
  readonly from: Point;
  readonly onto: Point;
}

/** What the residual allows: all, looking at the two in turn, or neither. */
export type FitVerdict = 'same' | 'blink only' | 'not the same station';

export interface PhotoFit {
  readonly kind: PhotoFitKind;
  /** From fractions of the photo to fractions of the one it lies on, for who works pixel by pixel. */
  readonly matrix: PlaneMap;
  /** Where a place of the photo lies on the other; may be outside it. */
  readonly through: (place: Point) => Point;
  /** The way back. */
  readonly back: (place: Point) => Point;
  /** Root mean square of how far each pair lies from where the others put it: pixels of the photo lain on, and share of its width. */
  readonly residual: { readonly px: number; readonly share: number };
  /** For each pair, shares of that width: what is left at it with all pairs, and with all but itself. */
  readonly perPair: readonly { readonly fitted: number; readonly leftOut: number }[];
  readonly verdict: FitVerdict;
  readonly reasons: readonly Reason[];
}

const rootMeanSquare = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / values.length);

const leftAt = (map: PlaneMap, { from, onto }: Tie): number => {
  const [x, y] = mapped(map, from);
  return Math.hypot(x - onto[0], y - onto[1]);
};

const without = <T>(list: readonly T[], at: number): T[] => list.filter((_, i) => i !== at);

const leftOutOf = (ties: readonly Tie[], kind: PhotoFitKind): number[] =>
  ties.map((tie, i) => leftAt(leastSquares(without(ties, i), kind), tie));

/**
 * How one photo lies on another, from pairs of places that are the same spot of the work. Fits as many pairs as there are by least
 * squares on the photo lain on, and tells how good that is by leaving each pair out (Allen 1974, Technometrics 16:125-127; from
 * memory): pairs met exactly because there are no more of them say nothing. Refuses too few pairs (4 for a similarity, 5 for an
 * affine fit, 6 for a homography), pairs in one place or on one line, and fits that mirror or fold the picture.
 */
export const fitPhotos = (
  pairs: readonly Pair[],
  size: Size,
  ontoSize: Size,
  kind: PhotoFitKind,
): PhotoFit | Refused => {
  const [aspect, ontoAspect] = [aspectOf(size), aspectOf(ontoSize)];
  const ties = pairs.map(
    ({ from, onto }): Tie => ({
      from: [from[0], from[1] * aspect],
      onto: [onto[0], onto[1] * ontoAspect],
    }),
  );
  const unfit = pairsRefused(ties, kind);
  if (unfit) return { refused: [unfit] };
  const map = leastSquares(ties, kind);
  const impossible = fitRefused(ties, map, kind, aspect);
  if (impossible) return { refused: [impossible] };
  const leftOut = leftOutOf(ties, kind);
  const share = rootMeanSquare(leftOut);
  if (!Number.isFinite(share)) return { refused: [because('fit: folded')] };
  const residual = { share, px: share * ontoSize.width };
  const verdict = verdictOf(share);
  return {
    ...movedBy(after(stretch(1, 1 / ontoAspect), after(map, stretch(1, aspect)))),
    kind,
    residual,
    perPair: ties.map((tie, i) => ({ fitted: leftAt(map, tie), leftOut: leftOut[i] as number })),
    verdict,
    reasons: [...reasonsOf(ties, leftOut, kind, residual, verdict), ...littleTakenIn(pairs)],
  };
};

const movedBy = (matrix: PlaneMap): Pick<PhotoFit, 'matrix' | 'through' | 'back'> => {
  const inverse = inverseOf(matrix);
  return { matrix, through: (place) => mapped(matrix, place), back: (place) => mapped(inverse, place) };
};

/** The same fit the other way round; its residual stays the one of the way it was tapped. */
export const turnedRound = (fit: PhotoFit): PhotoFit => ({ ...fit, ...movedBy(inverseOf(fit.matrix)) });

const verdictOf = (share: number): FitVerdict => {
  if (share <= fitNumbers.differenceUpTo.value) return 'same';
  return share <= fitNumbers.sameStationUpTo.value ? 'blink only' : 'not the same station';
};

const reasonsOf = (
  ties: readonly Tie[],
  leftOut: readonly number[],
  kind: PhotoFitKind,
  { share, px }: PhotoFit['residual'],
  verdict: FitVerdict,
): readonly Reason[] => {
  const reasons = [because('fit: residual', { percent: 100 * share, px, pairs: ties.length })];
  if (verdict === 'blink only') reasons.push(because('fit: blink only', { most: fitNumbers.differenceUpTo.value }));
  if (verdict === 'not the same station')
    reasons.push(because('fit: not the same station', { most: fitNumbers.sameStationUpTo.value }));
  const worst = verdict === 'same' ? undefined : standingOut(ties, kind, share, leftOut);
  if (worst) reasons.push(worst);
  if (kind === 'homography') reasons.push(because('fit: homography only where flat'));
  return reasons;
};

const littleTakenIn = (pairs: readonly Pair[]): readonly Reason[] => {
  const { x, y } = boundsOf([pairs.map(({ onto }) => onto)]);
  const share = (x[1] - x[0]) * (y[1] - y[0]);
  return share < fitNumbers.littleOfPicture.value
    ? [because('fit: pairs take up little of the picture', { share })]
    : [];
};

/** Of the pairs furthest off, so many are tried: the one that is wrong is among them. */
const tried = 3;

/** The pair without which the others agree best, where that is so much better that it must be the one that is off. */
const standingOut = (
  ties: readonly Tie[],
  kind: PhotoFitKind,
  share: number,
  leftOut: readonly number[],
): Reason | undefined => {
  if (ties.length <= fewestPairs[kind]) return undefined;
  const furthest = [...leftOut.keys()].sort((a, b) => (leftOut[b] as number) - (leftOut[a] as number)).slice(0, tried);
  const rests = furthest.map((i) => {
    const rest = without(ties, i);
    return pairsRefused(rest, kind) ? Number.POSITIVE_INFINITY : rootMeanSquare(leftOutOf(rest, kind));
  });
  const least = Math.min(...rests);
  if (!(share > least * fitNumbers.standsOut.value)) return undefined;
  const pair = (furthest[rests.indexOf(least)] as number) + 1;
  return because('fit: one pair stands out', { pair, percent: 100 * least });
};

/** The fit of a pair of photos as the record holds it. */
export const fitFrom = ({ pairs, size, ontoSize, kind }: BodyOf<'photoFit'>): PhotoFit | Refused =>
  fitPhotos(pairs, size, ontoSize, kind);

/** The pairs a record holds of two photos as pairs from `from` onto `onto`, whichever way round they were tapped. */
export const pairsBetween = (
  fits: readonly { readonly body: BodyOf<'photoFit'> }[],
  from: string,
  onto: string,
): { readonly pairs: readonly Pair[]; readonly kind: PhotoFitKind } | undefined => {
  const straight = fits.find(({ body }) => body.photo === from && body.onto === onto);
  if (straight) return straight.body;
  const turned = fits.find(({ body }) => body.photo === onto && body.onto === from);
  return (
    turned && {
      kind: turned.body.kind,
      pairs: turned.body.pairs.map((pair) => ({ from: pair.onto, onto: pair.from })),
    }
  );
};

/** How `from` lies on `onto` by the fits a record holds, whichever way round the two were tapped; undefined where none stands. */
export const fitBetween = (
  fits: readonly { readonly body: BodyOf<'photoFit'> }[],
  from: string,
  onto: string,
): PhotoFit | undefined => {
  const straight = fits.find(({ body }) => body.photo === from && body.onto === onto);
  const turned = fits.find(({ body }) => body.photo === onto && body.onto === from);
  const known = straight ?? turned;
  const fit = known && fitFrom(known.body);
  if (!fit || isRefused(fit)) return undefined;
  return straight ? fit : turnedRound(fit);
};
