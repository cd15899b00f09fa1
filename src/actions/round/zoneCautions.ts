import type { Thing } from '../../engine/record';
import { type Caution, cautionsAt, reaches } from '../../engine/trade';

type Zone = Thing<'zone'>;

const forZone = (zone: Zone): readonly Caution[] => {
  const from = reaches.find((reach) => reach.id === zone.body.reach)?.from ?? 'ground';
  const climbs = from === 'ladder' || from === 'step' ? 'lift-scaffold' : 'ladder';
  return [
    ...(from === 'ground' ? [] : cautionsAt('ladder').filter((caution) => caution.id !== climbs)),
    ...(zone.body.exposure.includes('waterline') ? cautionsAt('basin') : []),
    ...(zone.body.exposure.includes('insert') ? cautionsAt('insert') : []),
  ];
};

/** Cautions of a zone, each said once in a round: at the first zone in walking order it matters for. */
export const zoneCautions = (walk: readonly Zone[], zone: string): readonly Caution[] => {
  const at = walk.findIndex((z) => z.thing === zone);
  const here = walk[at];
  if (!here) return [];
  const said = new Set(walk.slice(0, at).flatMap((z) => forZone(z).map((caution) => caution.id)));
  return forZone(here).filter((caution) => !said.has(caution.id));
};
