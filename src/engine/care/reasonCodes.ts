import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const careReasons = {
  /** Square metres were written down with the work. */
  'care: area said': [],
  /** Square metres are those of the zones it was done on. */
  'care: area of the zones': ['zones'],
  'care: rate from the log': ['uses', 'm2'],
  'care: days out of order': ['first', 'last'],
  'care: first day missing': [],
  'care: range upside down': ['from', 'to'],
  'care: product without a name': [],
  'care: unit missing': [],
  'care: counted after today': ['day'],
  'care: cost below nothing': [],
  'care: somebody without a role': [],
  'care: allowed and forbidden': ['method'],
} as const satisfies Record<string, readonly string[]>;

export type CareReason = keyof typeof careReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends CareReason>(
  code: C,
  ...[params]: (typeof careReasons)[C] extends readonly []
    ? []
    : [Record<(typeof careReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
