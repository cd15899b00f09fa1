import type { Source } from '../trade';

interface ColourNumber {
  readonly value: number;
  /** What it is, with its unit. */
  readonly what: string;
  readonly source: Source;
}

const own = (value: number, what: string, why = 'Our own choice.'): ColourNumber => ({
  value,
  what,
  source: { text: why, sure: 'own choice' },
});

/** Every number a told difference of two colour readings rests on. A unit here is one unit of CIEDE2000. */
export const colourNumbers = {
  rangeLevel: own(0.9, 'Chance with which the range of a difference is to hold the true one'),
  fewestPlacings: {
    value: 3,
    what: 'Placings of the instrument under which a reading is said to be thin',
    source: { text: 'Common practice, no source.', sure: 'common practice, no source' },
  },
  freePlacings: own(
    2,
    'Placings beyond the first, of both readings together, from which their own spread is believed; under it one is assumed',
  ),
  assumedSpread: own(
    2,
    'Spread of single placings that is assumed where their own is not known, units',
    'Our own choice: patinated bronze is uneven, and the spot is never found again to the millimetre.',
  ),
  stray: own(5, 'Units a placing may lie from the mean of the others before it is asked whether it was typed right'),
  justSeen: {
    value: 1,
    what: 'Difference a practised eye just sees where two even surfaces touch in good light, units',
    source: { text: 'Rule of thumb of colour measurement.', sure: 'from memory' },
  },
  large: {
    value: 5,
    what: 'Difference over which the formula says “far apart”, and no more how far, units',
    source: {
      text: 'CIE 142-2001: CIEDE2000 was fitted to small differences, up to 5 units of CIELAB.',
      sure: 'from memory',
    },
  },
} as const satisfies Record<string, ColourNumber>;

/** Why no figure of a colour is taken from a photo. */
export const noFigureFromPhotos: Source = {
  text: 'Guidelines for the Technical Examination of Bronze Sculpture, II.2 on photography: light on each facet differs from that on a card, and bronze changes its colour with the angle.',
  sure: 'from memory',
};

/** What the formula rests on. */
export const colourFormulaSource: Source = {
  text: 'CIEDE2000 with factors of 1: ISO/CIE 11664-6; its check values: Sharma, Wu and Dalal 2005, Color Research and Application 30(1):21-30.',
  sure: 'seen',
};
