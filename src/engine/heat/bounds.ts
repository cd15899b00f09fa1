import type { Figure, Reason } from '../record';
import { type GlassData, type GlassKind, type HeatOfMetal, torchShare } from '../trade';
import { because } from './reasonCodes';

/** A sum that cannot be done, as a sentence. */
export type Bound = { readonly ok: true; readonly figure: Figure } | { readonly ok: false; readonly reason: Reason };

const refused = (what: string): Bound => ({ ok: false, reason: because('heat: figure not possible', { what }) });
const isSize = (n: number): boolean => Number.isFinite(n) && n > 0;

/** Middle of two bounds that lie far apart, as a ratio. */
const between = (low: number, high: number): number => Math.sqrt(low * high);

export interface HeatUp {
  readonly metal: HeatOfMetal;
  /** Thickness of the metal, m. */
  readonly thickness: number;
  /** Surface heated, m2. */
  readonly area: number;
  /** From the metal as it is to the heat it shall have, K. */
  readonly rise: number;
  /** Heat of the flame, W. */
  readonly power: number;
}

/**
 * Seconds to heat a plate through, t = rho c delta A dT / (eta P), no loss counted but that share eta of the flame which
 * goes into the metal: `low` with the most of it, `high` with the least. From memory, a balance of heat.
 */
export const heatUpTime = ({ metal, thickness, area, rise, power }: HeatUp): Bound => {
  for (const [what, size] of Object.entries({ thickness, area, rise, power })) if (!isSize(size)) return refused(what);
  const heat = metal.density * metal.specificHeat * thickness * area * rise;
  const low = heat / (torchShare.high * power);
  const high = heat / (torchShare.low * power);
  const reasons = [
    because('heat: share of the flame', { low: torchShare.low, high: torchShare.high }),
    because('heat: more through air'),
  ];
  return { ok: true, figure: { value: between(low, high), low, high, reasons } };
};

/** m2/s, from how the metal conducts. */
export const diffusivity = ({ conducts, density, specificHeat }: HeatOfMetal) => ({
  low: conducts.low / (density * specificHeat),
  high: conducts.high / (density * specificHeat),
});

/** Share of the surface's rise that has come to the depth 2 sqrt(alpha t) of a thick piece: erfc(1). */
export const shareAtReach = 0.15729920705028513;

/**
 * How far heat has gone after so many seconds, m: 2 sqrt(alpha t), where about a sixth of the rise has arrived
 * (`shareAtReach`). A bound for a talk: it is no distance at which anything is out of danger.
 */
export const reachOfHeat = (metal: HeatOfMetal, seconds: number): Bound => {
  if (!isSize(seconds)) return refused('time');
  const alpha = diffusivity(metal);
  const low = 2 * Math.sqrt(alpha.low * seconds);
  const high = 2 * Math.sqrt(alpha.high * seconds);
  const reasons = [because('heat: a sixth arrives'), because('heat: carries on along metal')];
  return { ok: true, figure: { value: between(low, high), low, high, reasons } };
};

/** Seconds after which about a sixth of the rise is so many metres away: the same sum turned round. */
export const arrivalOfHeat = (metal: HeatOfMetal, metres: number): Bound => {
  if (!isSize(metres)) return refused('distance');
  const alpha = diffusivity(metal);
  const low = metres ** 2 / (4 * alpha.high);
  const high = metres ** 2 / (4 * alpha.low);
  const reasons = [because('heat: a sixth arrives'), because('heat: carries on along metal')];
  return { ok: true, figure: { value: between(low, high), low, high, reasons } };
};

/**
 * Difference between two sides that the strength of a glass bears, K: `plane` held all round, sigma (1 - nu) / (E alpha);
 * `edge` held one way, sigma / (E alpha). From memory. Theory, over what the trade allows.
 */
export const glassDifference = ({ E, nu, alpha, sigma }: GlassData) => {
  const edge = (sigma * 1e6) / (E * 1e9 * alpha);
  return { plane: edge * (1 - nu), edge };
};

/**
 * What may be said of a glass: the practice limit leads; what theory says stands behind it and never above. Where nobody
 * can say (`value` undefined), it comes out before the heat, or its conservator says what it bears.
 */
export const glassBound = (kind: GlassKind, data: readonly GlassData[]) => {
  if (kind.limit === undefined)
    return { value: undefined, reasons: [because('heat: glass not known', { kind: kind.name })] } as const;
  const reasons = [because('heat: practice limit leads', { limit: kind.limit })];
  // The sets of data are of annealed glass: they say nothing of another.
  if (kind.id === 'annealed') reasons.push(because('heat: strength says more', theoryOf(data)));
  return { value: kind.limit, reasons } as const;
};

/** Of whole glass the least and the most, and of a weathered edge, K. */
const theoryOf = (data: readonly GlassData[]) => {
  const plane = (rows: readonly GlassData[]) => rows.map((row) => glassDifference(row).plane);
  const whole = plane(data.filter(({ id }) => id !== 'weathered'));
  const weathered = Math.min(...plane(data.filter(({ id }) => id === 'weathered')));
  return { low: Math.min(...whole), high: Math.max(...whole), weathered };
};
