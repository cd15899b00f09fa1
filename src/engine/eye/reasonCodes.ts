import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const eyeReasons = {
  // What a spread rests on.
  'eye: assumed, not known yet': [],
  'eye: known from': ['pairs', 'patches', 'worth'],
  'eye: not held steadier than': ['sd'],
  'eye: widened for few pairs': ['times'],
  // What a corrected figure rests on.
  'eye: corrected by the curve': ['patches'],
  'eye: bias not shown': [],
  'eye: no curve yet': [],
  'eye: curve too flat': [],
} as const satisfies Record<string, readonly string[]>;

export type EyeReason = keyof typeof eyeReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends EyeReason>(
  code: C,
  ...[params]: (typeof eyeReasons)[C] extends readonly []
    ? []
    : [Record<(typeof eyeReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
