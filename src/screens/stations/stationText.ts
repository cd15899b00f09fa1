import type { BodyOf } from '../../engine/record';
import { sides } from '../../engine/trade';
import { measureNumber, number, w, whole } from '../../words';

const words = w.stations.facts;

/** The eight sides in the order of the compass, from north. */
const compass = sides.slice(0, 8);

/** The side a bearing looks to: 250 is west. */
export const sideOf = (bearing: number): string => compass[Math.round(bearing / 45) % 8] ?? '';

/** What is said of a station beside its mark, each as a few words. */
export const factsOf = (station: BodyOf<'station'>): string[] => {
  const { bearing, distance, height, lens, format, light, wet } = station;
  return [
    bearing === undefined ? '' : words.looks(sideOf(bearing), whole(bearing)),
    distance === undefined ? '' : words.distance(measureNumber('length', distance, 1)),
    height === undefined ? '' : words.height(measureNumber('length', height, 2)),
    lens === undefined ? '' : words.lens(number(lens, 0)),
    format === undefined ? '' : words.format[format],
    light === undefined ? '' : words.light[light],
    wet === undefined ? '' : words.wet[wet],
  ].filter(Boolean);
};
