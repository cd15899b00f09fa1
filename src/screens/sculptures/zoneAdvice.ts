import type { Thing } from '../../engine/record';
import { areaToday } from './areaToday';

/** Our own advice, from common practice: longer rounds get cut short, and one zone must not speak for the whole work. */
export const advice = { mostZones: 12, largestShare: 0.45 } as const;

/** What to say of how a work is divided: too many zones, or one that is too large a share of it. */
export const zoneAdvice = (zones: readonly Thing<'zone'>[]) => {
  const total = zones.reduce((sum, zone) => sum + areaToday(zone), 0);
  const largest = zones.reduce<Thing<'zone'> | undefined>(
    (most, zone) => (most && areaToday(most) >= areaToday(zone) ? most : zone),
    undefined,
  );
  const share = largest && total > 0 ? areaToday(largest) / total : 0;
  return {
    tooMany: zones.length > advice.mostZones,
    tooLarge: zones.length > 1 && largest && share > advice.largestShare ? { zone: largest, share } : undefined,
  };
};
