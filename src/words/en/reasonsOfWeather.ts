import type { WeatherReason } from '../../engine/weather';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

const points: Readonly<Record<string, string>> = { dew: 'dew point', frost: 'frost point' };
const byProduct = (product: string): string => (product ? ` “${product}” asks for` : ' cold wax asks for');

/** What speaks for or against washing or waxing now. Temperatures in degrees Celsius. */
export const reasonsOfWeather = spoken('reasonsOfWeather', 'reasonsOfWeather', {
  'weather: frost': (s) =>
    `Frost: air or surface is at ${s.measure('limit', 'temperature')} or below. No water and no wax on the bronze.`,
  'weather: too near the dew point': (s) =>
    `The surface is ${s.measure('margin', 'difference', 1)} over the ${points[s.text('point')] ?? s.text('point')} of ${s.measure('celsius', 'temperature', 1)}; it takes ${s.measure('needs', 'difference')}, so ${s.measure('wanted', 'temperature', 1)}. Wax would close in damp.`,
  'weather: too damp': (s) => `Humidity is ${s.number('humidity', 1)} %; it takes less than ${s.number('limit')} %.`,
  'weather: not dry long enough': (s) => `Dry for ${s.number('hours')} hours so far; it takes ${s.number('needs')}.`,
  'weather: dryness not known': (s) =>
    `Nobody knows since when it is dry; it takes ${s.number('needs')} hours. Look into joints and hollows.`,
  'weather: surface too cold': (s) =>
    `The surface is ${s.measure('surface', 'temperature', 1)};${byProduct(s.text('product'))} at least ${s.measure('limit', 'temperature')}.`,
  'weather: surface too hot': (s) =>
    `The surface is ${s.measure('surface', 'temperature', 1)};${byProduct(s.text('product'))} ${s.measure('limit', 'temperature')} at most. Try in the shade or the evening.`,
  'weather: margin enough': (s) =>
    `The surface is ${s.measure('margin', 'difference', 1)} over the ${points[s.text('point')] ?? s.text('point')} of ${s.measure('celsius', 'temperature', 1)}; ${s.measure('needs', 'difference')} is enough.`,
  'weather: only just': (s) =>
    `Only just: with what hand instruments err it could be ${s.measure('low', 'difference', 1)}. Read again before the next zone.`,
  'weather: wash goes': () => 'No frost, and the metal is not hot: water may come on it.',
  'weather: humidity not possible': () => 'Humidity is over 0 and up to 100 %. Look at the instrument again.',
  'weather: after today': (s) => `${s.day('day')} is still to come. Give the day it was read.`,
  'weather: gone on without a word': () => 'Say who goes on all the same, and why.',
} satisfies Sentences<WeatherReason>);
