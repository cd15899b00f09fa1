import { hasEnd, type Redraw, returnTime, type Turnbull, turnbull, weibull } from '../life';
import type { Reason } from '../record';
import { rangeOver } from './curveOf';
import { wholeCollection } from './exposureGroup';
import type { OpenFigure, ZoneHolds } from './hold';
import { intervalOf, telling } from './interval';
import type { Life } from './life';
import { holdNumbers } from './numbers';
import { because } from './reasonCodes';

/** What the next hold of a zone is expected to be, and where that comes from. */
export interface Expectation {
  readonly from: 'own' | 'group' | 'nothing';
  /** Months until the chance of return reaches a share, given that it was clear so long; null where no fit stands. */
  readonly months: ((clearUntil: number, chance: number) => OpenFigure) | null;
  /** Where returns lay, for the next look; null where there are none at all. */
  readonly seen: Turnbull | null;
  /** Shape and scale, where a fit stands. */
  readonly fit: Redraw | null;
  /** None of the holds has come back yet. */
  readonly noneBack: boolean;
  readonly reasons: readonly Reason[];
}

const lifeOf = (lives: readonly Life[], group: string, event: string): Life | undefined =>
  lives.find((life) => life.group === group && life.event === event);

/** The zone's own holds of the span that goes on, the latest few. */
export const lastHolds = ({ holds, spans }: ZoneHolds) =>
  telling(holds.filter(({ span }) => span === spans.length - 1)).slice(-holdNumbers.lastHolds.value);

/**
 * The shape a zone's own few holds borrow: how alike holds are within a zone, where enough zones tell; else that of its group or of the
 * collection, which is flatter than any zone's, since zones differ.
 */
const lentShape = (
  group: Life | undefined,
  whole: Life | undefined,
): { readonly shape: number; readonly reason: Reason } | null => {
  const within = whole?.withinZones;
  if (within) {
    const { clusters, lives } = within;
    const shape = Math.min(within.shape, holdNumbers.mostAlike.value);
    return { shape, reason: because('hold: shape within zones', { shape, holds: lives, zones: clusters }) };
  }
  const lender = group?.fit ? group : whole;
  if (!lender?.fit) return null;
  const { holds, ends, fit } = lender;
  return { shape: fit.shape.value, reason: because('hold: shape borrowed', { shape: fit.shape.value, holds, ends }) };
};

/** From the zone's last three holds; with fewer, from its group. The shape is never its own: three holds do not tell one. */
export const expectationOf = (zone: ZoneHolds, lives: readonly Life[]): Expectation => {
  const own = lastHolds(zone).map(intervalOf);
  const group = lifeOf(lives, zone.group, zone.event);
  const whole = lifeOf(lives, wholeCollection, zone.event);
  const ownSeen = own.some(hasEnd) ? turnbull(own) : null;
  if (own.length < holdNumbers.lastHolds.value) return fromGroup(group, whole, own.length, ownSeen);

  const reasons = [because('hold: from its own holds', { holds: own.length })];
  const base = { from: 'own' as const, seen: turnbull(own), noneBack: !own.some(hasEnd) };
  if (base.noneBack) {
    const none = because('hold: none came back', { holds: own.length });
    return { ...base, months: null, fit: null, reasons: [...reasons, none] };
  }
  const lent = lentShape(group, whole);
  if (!lent) return { ...base, months: null, fit: null, reasons: [...reasons, because('hold: nothing to borrow')] };
  const { shape } = lent;
  const fit = weibull(own, { shape });
  if (!fit.ok) return { ...base, months: null, fit: null, reasons: [...reasons, fit.reason] };
  const { value, low, high } = fit.scale;
  const at = (scale: number | null, clear: number, chance: number): number | null =>
    scale === null ? null : returnTime({ shape, scale }, clear, chance);
  return {
    ...base,
    fit: { shape, scale: value },
    months: (clear, chance) => ({
      value: returnTime({ shape, scale: value }, clear, chance),
      low: at(low, clear, chance),
      high: at(high, clear, chance),
      reasons: [],
    }),
    reasons: [...reasons, lent.reason],
  };
};

/** A look is best placed where this very zone came back before, however seldom that was seen; else where others did. */
const fromGroup = (
  group: Life | undefined,
  whole: Life | undefined,
  own: number,
  ownSeen: Turnbull | null,
): Expectation => {
  const seen = ownSeen ?? group?.turnbull ?? null;
  if (!group?.turnbull) {
    const none = because('hold: too few holds, no group', { holds: own });
    const base = { from: 'nothing' as const, months: null, fit: null, noneBack: false };
    if (seen || !whole?.turnbull) return { ...base, seen, reasons: [none] };
    const elsewhere = because('hold: look from the whole collection', { holds: whole.holds, zones: whole.zones });
    return { ...base, seen: whole.turnbull, reasons: [none, elsewhere] };
  }
  const reasons = [because('hold: from its group', { holds: group.holds, zones: group.zones })];
  const { fit } = group;
  const base = { from: 'group' as const, seen, noneBack: group.ends === 0 };
  if (!fit) return { ...base, months: null, fit: null, reasons: [...reasons, ...group.reasons] };
  const here = { shape: fit.shape.value, scale: fit.scale.value };
  const borrowed = group.reasons.filter(({ code }) => code === 'hold: shape borrowed');
  return {
    ...base,
    fit: here,
    months: (clear, chance) => {
      const value = returnTime(here, clear, chance);
      const range = rangeOver(fit.draws, (draw) => returnTime(draw, clear, chance));
      // The scale's own range knows how wide the intervals are, the draws how zones differ: the wider of the two.
      const end = (scale: number | null): number | null =>
        scale === null ? null : returnTime({ ...here, scale }, clear, chance);
      const [least, most] = [end(fit.scale.low), end(fit.scale.high)];
      return {
        value,
        low: range.low === null || least === null ? null : Math.min(value, range.low, least),
        high: range.high === null || most === null ? null : Math.max(value, range.high, most),
        reasons: range.reasons,
      };
    },
    reasons: [...reasons, ...borrowed],
  };
};
