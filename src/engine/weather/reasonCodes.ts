import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const weatherReasons = {
  'weather: frost': ['limit'],
  /** `point` is 'dew' or 'frost'. */
  'weather: too near the dew point': ['margin', 'needs', 'point', 'celsius', 'wanted'],
  'weather: too damp': ['humidity', 'limit'],
  'weather: not dry long enough': ['hours', 'needs'],
  'weather: dryness not known': ['needs'],
  /** `product` is '' where the limit is the general one. */
  'weather: surface too cold': ['surface', 'limit', 'product'],
  'weather: surface too hot': ['surface', 'limit', 'product'],
  'weather: margin enough': ['margin', 'needs', 'point', 'celsius'],
  'weather: only just': ['low', 'needs'],
  'weather: wash goes': [],
  'weather: humidity not possible': [],
  'weather: after today': ['day'],
  'weather: gone on without a word': [],
} as const satisfies Record<string, readonly string[]>;

export type WeatherReason = keyof typeof weatherReasons;

export const because = <C extends WeatherReason>(
  code: C,
  params: Record<(typeof weatherReasons)[C][number], string | number>,
): Reason => ({ code, params });
