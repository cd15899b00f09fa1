import type { WeatherReason } from '../../engine/weather';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

const points: Readonly<Record<string, string>> = { dew: 'dew point', frost: 'frost point' };
const byProduct = (product: string): string => (product ? ` “${product}” asks for` : ' cold wax asks for');

/** What speaks for or against washing or waxing now. Temperatures in degrees Celsius. */
export const reasonsOfWeather = spoken('reasonsOfWeather', 'reasonsOfWeather', {
  'weather: frost': (s) =>
    `Frost: air or surface is at ${s.number('limit')} °C or below. No water and no wax on the bronze.`,
  'weather: too near the dew point': (s) =>
    `The surface is ${s.number('margin', 1)} K over the ${points[s.text('point')] ?? s.text('point')} of ${s.number('celsius', 1)} °C; it takes ${s.number('needs')} K, so ${s.number('wanted', 1)} °C. Wax would close in damp.`,
  'weather: too damp': (s) => `Humidity is ${s.number('humidity', 1)} %; it takes less than ${s.number('limit')} %.`,
  'weather: not dry long enough': (s) => `Dry for ${s.number('hours')} hours so far; it takes ${s.number('needs')}.`,
  'weather: dryness not known': (s) =>
    `Nobody knows since when it is dry; it takes ${s.number('needs')} hours. Look into joints and hollows.`,
  'weather: surface too cold': (s) =>
    `The surface is ${s.number('surface', 1)} °C;${byProduct(s.text('product'))} at least ${s.number('limit')} °C.`,
  'weather: surface too hot': (s) =>
    `The surface is ${s.number('surface', 1)} °C;${byProduct(s.text('product'))} ${s.number('limit')} °C at most. Try in the shade or the evening.`,
  'weather: margin enough': (s) =>
    `The surface is ${s.number('margin', 1)} K over the ${points[s.text('point')] ?? s.text('point')} of ${s.number('celsius', 1)} °C; ${s.number('needs')} K is enough.`,
  'weather: only just': (s) =>
    `Only just: with what hand instruments err it could be ${s.number('low', 1)} K. Read again before the next zone.`,
  'weather: wash goes': () => 'No frost, and the metal is not hot: water may come on it.',
  'weather: humidity not possible': () => 'Humidity is over 0 and up to 100 %. Look at the instrument again.',
  'weather: after today': (s) => `${s.day('day')} is still to come. Give the day it was read.`,
  'weather: gone on without a word': () => 'Say who goes on all the same, and why.',
} satisfies Sentences<WeatherReason>);
