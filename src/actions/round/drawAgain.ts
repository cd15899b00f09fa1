import type { SculptureRecord, Thing } from '../../engine/record';
import { reaches } from '../../engine/trade';

/** Three zones are asked again: enough to learn a surveyor's own spread over a season, few enough to be done. */
export const zonesAskedAgain = 3;

/** FNV-1a, 32 bits: spreads names evenly, and two tablets draw the same zones from the same round. */
const hash = (text: string): number => {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  // The last characters of two names alone must not decide their order.
  h ^= h >>> 16;
  h = Math.imul(h, 0x45d9f3b);
  return (h ^ (h >>> 16)) >>> 0;
};

const fromOf = (zone: Thing<'zone'>): string => reaches.find((r) => r.id === zone.body.reach)?.from ?? 'ground';

/**
 * Zones that can be looked at once more without a climb: from the ground, or from the lift or scaffold of the zone looked at last,
 * with a coverage judged in this round.
 */
export const canBeAskedAgain = (
  record: SculptureRecord,
  round: string,
  zones: readonly Thing<'zone'>[],
  lastZone: string | undefined,
): readonly Thing<'zone'>[] => {
  const last = zones.find((z) => z.thing === lastZone);
  const platform = last && ['lift', 'scaffold'].includes(fromOf(last)) ? fromOf(last) : undefined;
  const judged = new Set(
    record.findings
      .filter((f) => f.body.round === round && f.body.coverage && !f.body.carriedFrom && !f.body.cleared)
      .map((f) => f.body.zone),
  );
  return zones.filter((z) => judged.has(z.thing) && (fromOf(z) === 'ground' || fromOf(z) === platform));
};

/** The draw: seeded by the round's name, so that it is random to a person and the same after a restart. In walking order. */
export const drawAgain = (round: string, able: readonly Thing<'zone'>[]): readonly string[] => {
  const drawn = new Set(
    [...able]
      .sort((a, b) => hash(round + a.thing) - hash(round + b.thing) || (a.thing < b.thing ? -1 : 1))
      .slice(0, zonesAskedAgain)
      .map((z) => z.thing),
  );
  return able.filter((z) => drawn.has(z.thing)).map((z) => z.thing);
};
