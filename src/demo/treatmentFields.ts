import type { TreatmentFields } from '../actions';
import type { DemoTreatment, DemoWork } from './garden';

const toHalves = (x: number): number => Math.max(0.5, Math.round(x * 2) / 2);
const toFives = (x: number): number => Math.round(x / 5) * 5;

/** A row of the garden's tables as the deed takes it: hours and grams from the area, the tin by the name it was planted under. */
export const treatmentFields = (
  work: DemoWork,
  row: DemoTreatment,
  named: (letters: string | undefined) => string[],
  things: ReadonlyMap<string, string>,
): TreatmentFields => {
  const { zones, people, stock, gramsPerCoat, ...fields } = row;
  const there = work.zones.filter(({ letter }) => zones === undefined || zones.includes(letter));
  const m2 = there.reduce((sum, zone) => sum + zone.m2, 0);
  const tin = stock && things.get(stock);
  return {
    ...fields,
    zones: named(zones),
    ...(people ? { people: people.map(({ role, hoursPerM2 }) => ({ role, hours: toHalves(hoursPerM2 * m2) })) } : {}),
    ...(tin && gramsPerCoat ? { stock: tin, used: toFives(gramsPerCoat * m2 * (row.coats ?? 1)) } : {}),
  };
};
