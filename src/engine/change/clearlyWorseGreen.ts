import { kindOf, originOf } from '../trade';
import type { ThenAndNow } from './verdict';

/**
 * Zones, as they are now, whose green in the metal is clearly worse than in the last comparable round: what may raise an urgency
 * class. Takes the answer of thenAndNow for that pair of rounds.
 */
export const clearlyWorseGreen = (change: ThenAndNow): ReadonlySet<string> => {
  const told = new Set(
    change.findings
      .filter((f) => f.clearlyWorse && kindOf(f.kind)?.countsAs === 'green' && originOf(f.origin).hazard === 'kind')
      .map((f) => f.zone),
  );
  return new Set(change.zones.filter((z) => told.has(z.zone)).flatMap((z) => z.zonesNow));
};
