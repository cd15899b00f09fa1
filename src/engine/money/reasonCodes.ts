import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const moneyReasons = {
  'money: no amount': [],
  'money: not an amount': ['text'],
  'money: read two ways': ['text'],
  'money: below nothing': [],
  'money: too large': ['most', 'currency'],
  'money: too many places': ['text', 'currency', 'places'],
  'money: not a currency': ['text'],
  'money: currencies mixed': ['one', 'other'],
} as const satisfies Record<string, readonly string[]>;

export type MoneyReason = keyof typeof moneyReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends MoneyReason>(
  code: C,
  ...[params]: (typeof moneyReasons)[C] extends readonly []
    ? []
    : [Record<(typeof moneyReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
