import type { AreaChange, FindingChange, Judgement, ThenAndNow } from '../engine/change';
import type { Figure } from '../engine/record';
import type { Say } from './said';

/** A round against an earlier one: the five verdicts and what they rest on. */
export const shownChange = (change: ThenAndNow, said: Say) => {
  const judged = <J extends Judgement>({ reasons, ...rest }: J) => ({ ...rest, reasons: said(reasons) });
  const figure = (f: Figure | null) => f && { value: f.value, low: f.low, high: f.high, reasons: said(f.reasons) };
  const area = ({ earlier, later, difference, ...rest }: AreaChange) => ({
    ...judged(rest),
    earlier: figure(earlier),
    later: figure(later),
    difference: figure(difference),
  });
  const finding = (f: FindingChange) => judged(f);
  const { index, active, zonesBoth, zonesAll, areaShare } = change.sculpture;
  return {
    earlier: { id: change.earlier.thing, date: change.earlier.body.date },
    later: { id: change.later.thing, date: change.later.body.date },
    comparable: { ok: change.comparable.ok, reasons: said(change.comparable.reasons) },
    sculpture: {
      index: { ...judged(index), earlier: figure(index.earlier), later: figure(index.later) },
      active: { green: area(active.green), bare: area(active.bare), scale: area(active.scale) },
      zonesBoth,
      zonesAll,
      areaShare,
    },
    zones: change.zones.map((zone) => ({ ...judged(zone), earlier: figure(zone.earlier), later: figure(zone.later) })),
    findings: change.findings.map(finding),
    between: change.between,
    comparisons: change.comparisons,
    expectedByChance: change.expectedByChance,
    reasons: said(change.reasons),
  };
};
