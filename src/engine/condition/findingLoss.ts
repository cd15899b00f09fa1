import type { BodyOf, Reason } from '../record';
import { activityOf, countOf, counts, kindOf, ladder, originOf, type Scale, severityOf } from '../trade';
import { constants } from './constants';
import { type Coverage, coverageInterval, type EyeError, onAnotherDay } from './coverageError';
import { because } from './reasonCodes';

export type FindingBody = BodyOf<'finding'>;

/** What one finding takes off its zone, 0 to 0.98: hazard x severity x activity x extent, with the ends its coverage allows. */
export interface FindingScore {
  readonly finding: FindingBody;
  readonly loss: number;
  readonly low: number;
  readonly high: number;
  readonly parts: {
    readonly hazard: number;
    readonly severity: number;
    readonly activity: number;
    readonly extent: number;
  };
  /** Coverage it was scored with and its 90 % range; null for kinds not told by area. */
  readonly cover: { readonly value: number; readonly low: number; readonly high: number } | null;
  /** False for a kind this version does not know: shown, not scored, and said. */
  readonly scored: boolean;
  readonly reasons: readonly Reason[];
}

export interface ScoringOptions extends EyeError {
  /** The day shifts every eye by this much on the logit. */
  readonly dayShift?: number;
}

interface Extent {
  readonly at: number;
  readonly low: number;
  readonly high: number;
  readonly cover: FindingScore['cover'];
  readonly reasons: readonly Reason[];
}

const certain = (at: number, reasons: readonly Reason[] = []): Extent => ({
  at,
  low: at,
  high: at,
  cover: null,
  reasons,
});

/** Extent by area is the square root of the share: the first percent already says that the protection has gone. */
const areaExtent = Math.sqrt;

const byArea = (kind: string, given: Coverage | undefined, options: ScoringOptions): Extent => {
  if (!given) {
    // It was seen, so it covers something; how much is open from the least step to the whole zone.
    const least = ladder.find((step) => step.value > 0)?.value ?? 0;
    const cover = { value: least, low: 0, high: 1 };
    return { at: areaExtent(least), low: 0, high: 1, cover, reasons: [because('score: no coverage given', { kind })] };
  }
  const coverage = onAnotherDay(given, options.dayShift ?? 0);
  const ends = coverageInterval(coverage, options);
  const ofPhoto = given.method === 'dots' || given.method === 'traced' || given.method === 'photo';
  return {
    at: areaExtent(coverage.value),
    low: areaExtent(ends.low),
    high: areaExtent(ends.high),
    cover: { value: coverage.value, ...ends },
    reasons: ofPhoto ? [because('score: share of the photo', { kind, method: given.method })] : [],
  };
};

const extentOf = (finding: FindingBody, options: ScoringOptions): Extent => {
  const { kind } = finding;
  switch (kindOf(kind)?.measure) {
    case 'area':
      return byArea(kind, finding.coverage, options);
    case 'count':
      if (finding.count) return certain(countOf(finding.count).weight);
      return certain(counts[0]?.weight ?? 0, [because('score: no count given', { kind })]);
    case 'length':
    case 'presence':
      return certain(constants.fullExtent.value);
    default:
      return certain(0);
  }
};

/** Why a finding takes nothing off, whatever its extent; undefined where it does. */
const noLoss = (finding: FindingBody, hazard: number | undefined): Reason | undefined => {
  const { kind, coverage } = finding;
  if (finding.cleared) return because('score: cleared', { kind });
  if (hazard === undefined) return because('score: kind not known', { kind });
  if (originOf(finding.origin).hazard === 'none') return because('score: dirt, look again after washing', { kind });
  if (kindOf(kind)?.measure === 'area' && coverage?.value === 0) return because('score: looked, none there', { kind });
  return undefined;
};

/** Scores one finding by a scale. Does not ask whether it was carried over: the zone does. */
export const scoreFinding = (finding: FindingBody, scale: Scale, options: ScoringOptions = {}): FindingScore => {
  const kindHazard = scale.hazardOf(finding.kind);
  const severity = severityOf(finding.severity).weight;
  const activity = activityOf(finding.activity).weight;
  const none = noLoss(finding, kindHazard);
  if (none || kindHazard === undefined) {
    return {
      finding,
      loss: 0,
      low: 0,
      high: 0,
      parts: { hazard: 0, severity, activity, extent: 0 },
      cover: null,
      scored: kindHazard !== undefined,
      reasons: none ? [none] : [],
    };
  }
  const stain = originOf(finding.origin).hazard === 'stain';
  const hazard = stain ? scale.stainHazard : kindHazard;
  const extent = extentOf(finding, options);
  const lossAt = (share: number): number => Math.min(constants.lossCap.value, hazard * severity * activity * share);
  return {
    finding,
    loss: lossAt(extent.at),
    low: lossAt(extent.low),
    high: lossAt(extent.high),
    parts: { hazard, severity, activity, extent: extent.at },
    cover: extent.cover,
    scored: true,
    reasons: [
      ...(stain ? [because('score: stain takes its own hazard', { kind: finding.kind, hazard })] : []),
      ...extent.reasons,
    ],
  };
};
