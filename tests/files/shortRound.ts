import { type YearlyRound, yearlyRound } from './yearlyRound';

/** The yearly round with its first zones only: one as it was, one that changed, one as it was, one with something new. */
export const shortRound = (): YearlyRound => {
  const whole = yearlyRound();
  const zones = whole.zones.slice(0, 4);
  const kept = new Set(zones.map(({ thing }) => thing));
  const of = (entry: YearlyRound['entries'][number]): string | undefined =>
    entry.kind === 'zone' ? entry.thing : (entry.body.zone as string | undefined);
  const entries = whole.entries.filter((entry) => {
    const zone = of(entry);
    return zone === undefined || kept.has(zone);
  });
  return { ...whole, zones, entries };
};
