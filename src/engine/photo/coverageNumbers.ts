import type { Source } from '../trade';

interface CoverageNumber {
  readonly value: number;
  /** What it is, with its unit. */
  readonly what: string;
  readonly source: Source;
}

const own = (value: number, what: string, why = 'Our own choice.'): CoverageNumber => ({
  value,
  what,
  source: { text: why, sure: 'own choice' },
});

/** Every number that coverage measured on a photo rests on, beside those of engine/condition. */
export const coverageNumbers = {
  leastZone: own(10_000, 'Pixels a zone must have on the photo to be measured there, as much as 100 by 100'),
  hand: own(
    0.005,
    'How far a tapped corner lies from where it should, one way: standard deviation, share of the photo width',
  ),
  fewestDots: own(20, 'Dots that must be judged before a share is told from them'),
  mostGlare: own(
    0.3,
    'Share of the dots, or of the zone, lost to glare and deep shade from which nothing is told of the zone',
  ),
  mostOpen: own(
    0.1,
    'Share of the dots that may be left open: they lie row by row, and the first rows are not the zone',
  ),
  saidGlare: own(0.1, 'Share lost to glare and deep shade from which it is said'),
  closestDots: own(5, 'Pixels between dots under which they fall on the same spot of the picture'),
  patchSpacing: {
    value: 0.8,
    what: 'Distance of the dots, share of the width of the largest patch, under which neighbours are said to tell the same',
    source: {
      text: 'Advice on spacing in point-intercept counts of plants, as told in field manuals.',
      sure: 'from memory',
    },
  },
  checkDots: own(30, 'Check dots laid over a mask and outside it'),
  fewestChecks: own(20, 'Check dots that must be judged before a share is told from them'),
  fewestChecksEach: own(5, 'Check dots that must be judged in the mask, and outside it, each'),
  smallSide: own(0.01, 'Share of the zone up to which a mask, or what lies outside it, needs no check dots of its own'),
  mostWrong: own(
    0.5,
    'Share of the check dots in a mask that are not green over which the mask is said to follow something else',
  ),
  slips: own(0.05, 'Judgements of check dots that may be slips of the hand or the eye, either way, share'),
  samplesEach: own(3, 'Spots to tap of green, and of sound surface, each'),
  apart: own(
    8,
    'Distance of green from sound in a*b* under which the two are too alike to be told apart pixel by pixel',
  ),
  clipped: own(254, 'Value of red, green or blue from which a pixel is taken for glare, of 255'),
  brightest: own(95, 'L* over which a pixel is left out as glare'),
  darkest: own(8, 'L* under which a pixel is left out as deep shade'),
} as const satisfies Record<string, CoverageNumber>;
