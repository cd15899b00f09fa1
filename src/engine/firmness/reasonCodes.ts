import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const firmnessReasons = {
  'firmness: stays among the first': ['places', 'ofHundred'],
  'firmness: near the end of the list': ['zones'],
  'firmness: places it may have': ['low', 'high'],
  'firmness: what was redrawn': ['draws', 'percent'],
  'firmness: urgency set by a person': [],
} as const satisfies Record<string, readonly string[]>;

export type FirmnessReason = keyof typeof firmnessReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends FirmnessReason>(
  code: C,
  ...[params]: (typeof firmnessReasons)[C] extends readonly []
    ? []
    : [Record<(typeof firmnessReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
