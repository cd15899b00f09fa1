import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const siteReasons = {
  'site: outside the range': ['what', 'value', 'low', 'high'],
  'site: two columns, two categories': ['metal', 'byThickness', 'byMass'],
  'site: beyond the table': ['metal', 'rate', 'most'],
  'site: straight line beyond': ['years'],
  'site: clean coupons': [],
} as const satisfies Record<string, readonly string[]>;

export type SiteReason = keyof typeof siteReasons;

export const because = (code: SiteReason, params: Reason['params'] = {}): Reason => ({ code, params });
