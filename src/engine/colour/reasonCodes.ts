import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const colourReasons = {
  'colour: other illuminant': ['one', 'other'],
  'colour: other observer': ['one', 'other'],
  'colour: other geometry': ['one', 'other'],
  'colour: other aperture': ['one', 'other'],
  'colour: other wetness': ['one', 'other'],
  /** Between the two the surface became another one. */
  'colour: another surface since': ['treatment', 'date'],
  'colour: aperture not known': [],
  'colour: wetness not known': [],
  'colour: other instrument': [],
  'colour: done in between': ['treatment', 'date'],
  /** A reading between the two was left out: it was made in another way. */
  'colour: passed over': ['date'],
  'colour: few placings': ['n', 'fewest'],
  'colour: spread of placings': ['spread'],
  'colour: spread assumed': ['spread'],
  'colour: too far apart for the formula': ['limit'],
} as const satisfies Record<string, readonly string[]>;

export type ColourReason = keyof typeof colourReasons;

export const because = (code: ColourReason, params: Reason['params'] = {}): Reason => ({ code, params });
