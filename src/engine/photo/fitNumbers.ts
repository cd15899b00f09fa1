import type { BodyOf } from '../record';
import type { Source } from '../trade';

/** How one photo may be moved to lie on another. */
export type PhotoFitKind = BodyOf<'photoFit'>['kind'];

interface FitNumber {
  readonly value: number;
  /** What it is, with its unit. */
  readonly what: string;
  readonly source: Source;
}

const own = (value: number, what: string): FitNumber => ({
  value,
  what,
  source: { text: 'Our own choice.', sure: 'own choice' },
});

/** Every number that laying one photo on another rests on. */
export const fitNumbers = {
  differenceUpTo: own(
    0.01,
    'Residual, share of the width of the photo lain on, up to which a change map is drawn of two photos',
  ),
  sameStationUpTo: own(
    0.03,
    'Residual, share of the width of the photo lain on, up to which two photos are of the same station',
  ),
  onePlace: own(
    0.05,
    'Spread of the pairs (root mean square from their middle, along where they lie longest), share of the width, under which they lie in one place',
  ),
  oneLine: own(0.01, 'The same across: share of the width under which the pairs lie on one line'),
  littleOfPicture: own(
    0.25,
    'Share of the picture between the outermost pairs under which it is said that they take up little of it',
  ),
  shortestScale: own(
    0.1,
    'Distance of the two places of a scale, share of the width, under which a hand off by half a hundredth makes the area uncertain by more than its own range',
  ),
  otherLens: own(0.1, 'Difference of the lenses of two photos, share of the shorter, from which it is said'),
  standsOut: own(2, 'How many times the residual without it a pair leaves, from which it is named as standing out'),
} as const satisfies Record<string, FitNumber>;

/** Pairs each way of laying asks for: one more than meet without anything left over, or two, so that each can be left out. */
export const fewestPairs: Readonly<Record<PhotoFitKind, number>> = { similarity: 4, affine: 5, homography: 6 };
