import type { AirReading } from '../../engine/weather';
import { inUnit, numberTyped, typedMeasure, typedPercent } from '../../words';

/** The three numbers as they stand on the screen, '' until read. */
export interface AirDraft {
  readonly before: AirReading['before'];
  readonly air: string;
  readonly humidity: string;
  readonly surface: string;
  /** Hours at least, 'unknown', or not said yet. */
  readonly dry: string;
}

export type NumberRead = 'air' | 'humidity' | 'surface';

/** Where each number may lie, where a first touch of its steps starts, and the steps. Ends as the record has them. */
export const numberRules: Readonly<
  Record<
    NumberRead,
    { readonly low: number; readonly high: number; readonly start: number; readonly steps: readonly [number, number] }
  >
> = {
  air: { low: -60, high: 60, start: 15, steps: [1, 0.1] },
  humidity: { low: 1, high: 100, start: 60, steps: [5, 1] },
  surface: { low: -60, high: 100, start: 15, steps: [1, 0.1] },
};

/** A temperature in the unit of the device or a humidity as typed: comma or point, below nought too; undefined where it is none or out of bounds. */
export const readNumber = (text: string, what: NumberRead): number | undefined => {
  const value = what === 'humidity' ? typedPercent(text) : typedMeasure('temperature', text);
  const { low, high } = numberRules[what];
  return value !== undefined && value >= low && value <= high ? value : undefined;
};

/** One step on from what stands there; from nothing to where `from` or the rule starts. */
export const stepped = (text: string, what: NumberRead, by: number, from: number | undefined): string => {
  const { low, high, start } = numberRules[what];
  const was = readNumber(text, what);
  const shown = (value: number) => (what === 'humidity' ? value : inUnit('temperature', value));
  const is = was === undefined ? shown(from ?? start) : shown(was) + by;
  return numberTyped(Math.round(Math.min(shown(high), Math.max(shown(low), is)) * 10) / 10);
};

export const emptyAir = (before: AirDraft['before']): AirDraft => ({
  before,
  air: '',
  humidity: '',
  surface: '',
  dry: '',
});

/** The reading, or undefined while one of its numbers is missing. A wash does not ask how long it has been dry. */
export const readingOf = (draft: AirDraft, time: string): AirReading | undefined => {
  const [air, humidity, surface] = (['air', 'humidity', 'surface'] as const).map((what) =>
    readNumber(draft[what], what),
  );
  if (air === undefined || humidity === undefined || surface === undefined) return undefined;
  if (draft.dry === '' && draft.before !== 'wash') return undefined;
  const hours = draft.dry === '' || draft.dry === 'unknown' ? {} : { dryHours: Number(draft.dry) };
  return { before: draft.before, time, air, humidity, surface, ...hours };
};
