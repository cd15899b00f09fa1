import type { NeedOf } from '../condition';
import type { Advice, ZoneHolds } from '../hold';
import { endOf, type SculptureRecord, type Thing } from '../record';

/** What the record of a work says, as far as a way to go on is concerned. */
export interface Situation {
  readonly record: Pick<SculptureRecord, 'zones' | 'treatments' | 'inserts'>;
  /** The latest round scored and classed; null where nobody has looked yet. */
  readonly need: NeedOf | null;
  readonly holds: readonly ZoneHolds[];
  readonly advice: readonly Advice[];
  /** m2 of green a year over the last unbroken stretch of rounds, and whether that is more than chance. Null where too few rounds. */
  readonly growth: {
    readonly perYear: { readonly value: number; readonly low: number; readonly high: number };
    readonly surely: boolean;
    readonly rounds: number;
  } | null;
  readonly causes: readonly Thing<'cause'>[];
  /** YYYY-MM-DD. */
  readonly today: string;
}

/** How long the next coating of a zone is expected to keep the green away, months; null where nothing tells. */
export interface ZoneMonths {
  readonly zone: string;
  readonly months: { readonly value: number; readonly low: number; readonly high: number } | null;
  /** Green stood there right after the coating: no month of it was clear. */
  readonly notClean: boolean;
}

const year = 12;
const capped = (months: number): number => Math.min(year, Math.max(0, months));

/** By living zone in walking order, held to a year: it is waxed again then. */
export const monthsByZone = ({
  record,
  holds,
  advice,
}: Pick<Situation, 'record' | 'holds' | 'advice'>): readonly ZoneMonths[] =>
  record.zones
    .filter((zone) => endOf(zone) === undefined)
    .map(({ thing }): ZoneMonths => {
      const on = holds.find(({ zone }) => zone === thing)?.onNow;
      if (on?.state === 'not clean') return { zone: thing, months: { value: 0, low: 0, high: 0 }, notClean: true };
      const expected = advice.find(({ zone }) => zone === thing)?.expected ?? null;
      const months = expected && {
        value: capped(expected.value),
        low: capped(expected.low ?? 0),
        high: capped(expected.high ?? year),
      };
      return { zone: thing, months, notClean: false };
    });

export const monthsOfYear = { year, capped } as const;
