import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const budgetReasons = {
  'budget: how it is weighed': [],
  'budget: not in it': [],
  'budget: exact to': ['m2'],
  'budget: range': [],
  'budget: stop word': [],
  'budget: no work for it': [],
  'budget: too little money': [],
  'budget: no price': [],
} as const satisfies Record<string, readonly string[]>;

export type BudgetReason = keyof typeof budgetReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends BudgetReason>(
  code: C,
  ...[params]: (typeof budgetReasons)[C] extends readonly []
    ? []
    : [Record<(typeof budgetReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
