import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const lifeReasons = {
  'life: no interval': [],
  'life: no end seen': ['n'],
  'life: never seen lasting': ['n'],
  'life: one interval only': [],
  'life: all share a stretch': ['n', 'from', 'to'],
  'life: no maximum': ['n'],
  'life: shape borrowed': ['shape'],
  'life: no lower limit': ['what'],
  'life: no upper limit': ['what'],
} as const satisfies Record<string, readonly string[]>;

export type LifeReason = keyof typeof lifeReasons;

export const because = (code: LifeReason, params: Reason['params'] = {}): Reason => ({ code, params });
