import { agreementOf, roundsDoneTwice } from '../engine/agreement';
import type { Figure, SculptureRecord, Thing } from '../engine/record';
import type { Say } from './said';

/** Every round of a work that two people made beside each other, the latest first, and how far they agreed. */
export const shownAgreement = (record: SculptureRecord, said: Say) => {
  const figure = (f: Figure | null) => f && { value: f.value, low: f.low, high: f.high, reasons: said(f.reasons) };
  const round = ({ thing, body }: Thing<'round'>) => ({ id: thing, date: body.date, surveyor: body.surveyor });
  return roundsDoneTwice(record).map(({ one, other, days }) => {
    const { zonesBoth, zonesAll, kinds, severity, coverage, apart, reasons } = agreementOf(
      record,
      one.thing,
      other.thing,
    );
    return {
      sculpture: record.sculpture.thing,
      one: round(one),
      other: round(other),
      days,
      zonesBoth,
      zonesAll,
      kinds: { ...kinds, kappa: figure(kinds.kappa), reasons: said(kinds.reasons) },
      severity: { ...severity, kappa: figure(severity.kappa), reasons: said(severity.reasons) },
      coverage: {
        n: coverage.n,
        icc: figure(coverage.icc),
        whereOneSays20: figure(coverage.whereOneSays20),
        reasons: said(coverage.reasons),
      },
      apart: apart.map(({ zone, kind, why, one: a, other: b, z }) => ({ zone, kind, why, one: a, other: b, z })),
      reasons: said(reasons),
    };
  });
};
