import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const fundReasons = {
  'fund: title missing': [],
  'fund: line twice': ['name'],
  'fund: line without a name': [],
  'fund: wanted before priced': ['wanted', 'priced'],
  'fund: nobody named': [],
  'fund: nothing given': [],
  'fund: chance missing': [],
  'fund: came before it was here': ['day'],
  'fund: day it came missing': [],
  'fund: not yet come': ['state'],
  'fund: line not known': [],
  'fund: day of prices to come': ['day'],
} as const satisfies Record<string, readonly string[]>;

export type FundReason = keyof typeof fundReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends FundReason>(
  code: C,
  ...[params]: (typeof fundReasons)[C] extends readonly []
    ? []
    : [Record<(typeof fundReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
