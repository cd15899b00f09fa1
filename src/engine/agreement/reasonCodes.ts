import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const agreementReasons = {
  'agreement: too few': ['n', 'least'],
  'agreement: all alike': ['n'],
  'agreement: carried left out': ['count'],
  'agreement: no zone judged by both': [],
  'agreement: rounds not alike': [],
  'agreement: days apart': ['days'],
  'agreement: eyes differ as expected': [],
  'agreement: eyes differ by more than expected': [],
} as const satisfies Record<string, readonly string[]>;

export type AgreementReason = keyof typeof agreementReasons;

export const because = (code: AgreementReason, params: Reason['params'] = {}): Reason => ({ code, params });
