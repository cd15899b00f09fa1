import { deviceReason } from '../device/reasonCodes';
import type { Entry, Reason } from '../engine/record';

/** More than places of the world lie apart, milliseconds. */
const apart = 36 * 3_600_000;

const isAhead = (at: string, now: string): boolean => Date.parse(at) - Date.parse(now) > apart;

const dayOf = (at: string): string => at.slice(0, 10);

/**
 * Entries of a file whose time lies ahead of this device's: one of the two clocks is wrong. They are taken all the same, for nothing is
 * ordered by a clock; but the person should know.
 */
export const clocksApart = (entries: readonly Entry[], now: string): Reason[] => {
  const ahead = entries.filter((entry) => isAhead(entry.at, now));
  if (ahead.length === 0) return [];
  const latest =
    ahead
      .map(({ at }) => dayOf(at))
      .sort()
      .at(-1) ?? '';
  return [deviceReason('clocks apart', { count: ahead.length, day: latest })];
};

/** The last deed here was done on a day that is still to come: the clock was ahead then, or is behind now. */
export const clockWent = (last: { readonly at: string } | undefined, now: string): Reason[] =>
  last && isAhead(last.at, now) ? [deviceReason('clock out of step', { day: dayOf(last.at), today: dayOf(now) })] : [];
