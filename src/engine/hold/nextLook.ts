import type { Redraw, Turnbull } from '../life';
import { addDays, type SculptureRecord, weekdayOf } from '../record';
import type { Expectation } from './expectation';
import { holdNumbers } from './numbers';

/** Months after the coating: when a look tells most, and between what it tells nearly as much. */
export interface Telling {
  readonly at: number;
  readonly low: number | null;
  readonly high: number | null;
  /** Chance that this look finds the green, share. */
  readonly chance: number;
}

/** Share of a stretch's mass that lies before a time: by the fit where one stands, else evenly. */
const shareBefore = (left: number, right: number, time: number, fit: Redraw | null): number => {
  if (time >= right) return 1;
  if (time <= left) return 0;
  const even = (time - left) / (right - left);
  if (!fit) return even;
  const over = (at: number): number => -Math.expm1(-((at / fit.scale) ** fit.shape));
  const [from, to] = [over(left), over(right)];
  // A fit that puts nothing here has nothing to say of where within.
  return to - from > 1e-12 ? (over(time) - from) / (to - from) : even;
};

const finite = ({ masses }: Turnbull) => masses.filter(({ right }) => right < Number.POSITIVE_INFINITY);

/** Chance that it has come back by a time. */
const backBy = (seen: Turnbull, time: number, fit: Redraw | null): number =>
  finite(seen).reduce((sum, { left, right, mass }) => sum + mass * shareBefore(left, right, time, fit), 0);

/** The stretch of time, months, in which the chance of return passes a share, given that it was clear at `clearUntil`. */
export const reachedIn = (
  seen: Turnbull | null,
  clearUntil: number,
  chance: number,
): { readonly from: number; readonly to: number } | null => {
  if (!seen) return null;
  const already = backBy(seen, clearUntil, null);
  const left = finite(seen).filter(({ right }) => right > clearUntil);
  let sum = 0;
  for (const { left: from, right: to, mass } of left) {
    const within = mass * (1 - shareBefore(from, to, clearUntil, null));
    sum += within / Math.max(1 - already, 1e-9);
    if (sum >= chance - 1e-9) return { from: Math.max(from, clearUntil), to };
  }
  return null;
};

/** How often a stretch is halved to find a time: to well under a day. */
const halvings = 40;

/**
 * A look answers yes or no, and tells most where both are as likely as can be: at the middle of what the holds leave open, given that
 * it was still clear at `clearUntil` (months). Null where none of them has come back later than that.
 */
export const tellingMost = ({ seen, fit }: Pick<Expectation, 'seen' | 'fit'>, clearUntil: number): Telling | null => {
  const last = seen ? finite(seen).at(-1) : undefined;
  if (!seen || !last || last.right <= clearUntil) return null;
  const already = backBy(seen, clearUntil, fit);
  if (1 - already < 1e-9) return null;
  const chanceBy = (time: number): number => (backBy(seen, time, fit) - already) / (1 - already);
  const reaches = (chance: number): number | null => {
    if (chanceBy(last.right) < chance - 1e-9) return null;
    let [low, high] = [clearUntil, last.right];
    for (let i = 0; i < halvings; i++) {
      const middle = (low + high) / 2;
      if (chanceBy(middle) < chance) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  const from = holdNumbers.tellingFrom.value;
  const at = reaches(0.5) ?? last.right;
  return { at, low: reaches(from), high: reaches(1 - from), chance: Math.min(0.5, chanceBy(at)) };
};

/** 0 Sunday to 6 Saturday; `known` is false where nobody has made a look yet and the weekday is that of the coating. */
export interface WalkDay {
  readonly weekday: number;
  readonly known: boolean;
}

/** The weekday most looks of the work were made on, of several the latest; before the first look that of the last coating. */
export const walkDayOf = (record: Pick<SculptureRecord, 'looks'>, today: string, coated: string): WalkDay => {
  const days = [...new Set(record.looks.filter(({ body }) => body.date <= today).map(({ body }) => body.date))].sort();
  const counts = new Map<number, number>();
  for (const day of days) counts.set(weekdayOf(day), (counts.get(weekdayOf(day)) ?? 0) + 1);
  const most = Math.max(...counts.values());
  const latest = days.filter((day) => counts.get(weekdayOf(day)) === most).at(-1);
  return latest ? { weekday: weekdayOf(latest), known: true } : { weekday: weekdayOf(coated), known: false };
};

/** The walk nearest to a day: three days before to three after; the first walk from `notBefore` on where it would come sooner. */
export const nearestWalk = (day: string, { weekday }: WalkDay, notBefore: string): string => {
  const nearest = addDays(day, ((weekday - weekdayOf(day) + 10) % 7) - 3);
  return nearest >= notBefore ? nearest : addDays(notBefore, (weekday - weekdayOf(notBefore) + 7) % 7);
};
