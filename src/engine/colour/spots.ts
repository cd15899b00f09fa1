import type { Thing } from '../record';

/** One place the instrument was put down at, and its readings, the earliest first. */
export interface Spot {
  readonly key: string;
  /** Zone or sentinel; undefined where only the work is said. */
  readonly about: string | undefined;
  /** As it was last written; '' where nothing was. */
  readonly position: string;
  readonly readings: readonly Thing<'reading'>[];
}

/** Words that name the same place, however they were typed. */
const samePlace = (position: string): string => position.trim().toLowerCase().replace(/\s+/g, ' ');

export const spotKey = (about: string | undefined, position: string): string => `${about ?? ''} ${samePlace(position)}`;

const aboutOf = ({ body }: Thing<'reading'>): string | undefined => body.sentinel ?? body.zone;

const byDate = (a: Thing<'reading'>, b: Thing<'reading'>): number =>
  a.body.date.localeCompare(b.body.date) || (a.thing < b.thing ? -1 : 1);

/** Readings by the place they were made at: the same zone or sentinel, and the same words for where in it. The place read last comes first. */
export const spotsOf = (readings: readonly Thing<'reading'>[]): readonly Spot[] => {
  const spots = new Map<string, Thing<'reading'>[]>();
  for (const reading of [...readings].sort(byDate)) {
    const key = spotKey(aboutOf(reading), reading.body.position ?? '');
    spots.set(key, [...(spots.get(key) ?? []), reading]);
  }
  return [...spots]
    .map(([key, own]) => {
      const last = own.at(-1) as Thing<'reading'>;
      return { key, about: aboutOf(last), position: last.body.position?.trim() ?? '', readings: own };
    })
    .sort((a, b) => (b.readings.at(-1)?.body.date ?? '').localeCompare(a.readings.at(-1)?.body.date ?? ''));
};
