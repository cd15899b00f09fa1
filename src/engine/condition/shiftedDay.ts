import type { ActiveArea } from '../trade';
import { activeKinds, countsAs } from './activeArea';
import { constants } from './constants';
import { onAnotherDay } from './coverageError';
import type { FindingScore } from './findingLoss';
import type { ZoneScore } from './zoneIndex';

/** What of a zone is asked for on a duller or a brighter day: figures without their ranges. */
export type ShiftedZone = Pick<ZoneScore, 'zone' | 'value' | 'area' | 'significance'> & {
  readonly active: Readonly<Record<ActiveArea, { readonly value: number }>>;
};

/** Coverage of a finding had the day shifted the eye that judged it; null for kinds not told by area. */
const coverOn = ({ finding, cover }: FindingScore, shift: number): number | null =>
  cover && finding.coverage ? onAnotherDay(finding.coverage, shift).value : (cover?.value ?? null);

/** The loss as scoreFinding has it, at another coverage: extent by area is the square root of the share. */
const lossOn = (score: FindingScore, share: number | null): number => {
  if (share === null || !score.finding.coverage) return score.loss;
  const { hazard, severity, activity } = score.parts;
  return Math.min(constants.lossCap.value, hazard * severity * activity * Math.sqrt(share));
};

/** A scored zone as it would be had light and damp shifted every eye of the day by `shift` on the logit. */
export const onShiftedDay = (scored: ZoneScore, shift: number): ShiftedZone => {
  const { zone, area, significance, findings } = scored;
  const shares = findings.map((score) => coverOn(score, shift));
  // Sorted, so that rounding is the same in whatever order they were entered.
  const losses = findings.map((score, i) => lossOn(score, shares[i] ?? null)).sort((a, b) => a - b);
  const kept = losses.reduce((rest, loss) => rest * (1 - loss), 1);
  const activeOf = (what: ActiveArea): number => {
    const total = findings.reduce((sum, score, i) => sum + (countsAs(score, what) ? (shares[i] ?? 0) : 0), 0);
    return Math.min(1, total) * area.m2;
  };
  const [green, bare, scale] = activeKinds.map((what) => ({ value: activeOf(what) })) as [
    { value: number },
    { value: number },
    { value: number },
  ];
  return { zone, area, significance, value: 100 * kept, active: { green, bare, scale } };
};
