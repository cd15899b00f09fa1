import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const trendReasons = {
  // What a series is made of.
  'trend: rounds of another kind left out': ['rounds'],
  'trend: rounds with too little seen left out': ['rounds'],
  'trend: zones left out': ['zones', 'area'],
  'trend: series broken': ['treatment', 'date', 'share'],
  'trend: perhaps broken between': ['treatment', 'date'],
  'trend: broken since': ['treatment', 'date'],
  'trend: other surveyor': ['count'],
  // How sure.
  'trend: too few rounds': ['n', 'least'],
  'trend: all pairs': ['n', 'p'],
  'trend: slope interval': ['coverage', 'n'],
  'trend: not shown': ['n', 'p'],
  // Carried on.
  'trend: if care goes on': [],
  'trend: no trend to carry on': [],
  'trend: too far to tell': ['years'],
} as const satisfies Record<string, readonly string[]>;

export type TrendReason = keyof typeof trendReasons;

export const because = (code: TrendReason, params: Reason['params'] = {}): Reason => ({ code, params });
