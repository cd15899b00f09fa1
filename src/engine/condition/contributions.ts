import type { FindingScore } from './findingLoss';
import { total, weightOf } from './sharedDay';
import type { ZoneScore } from './zoneIndex';

/** Points of the index one finding takes off. */
export interface Contribution {
  readonly finding: FindingScore['finding'];
  /** 0 or more; over all findings they add up to 100 less the index. */
  readonly points: number;
}

const burdenOf = ({ loss }: FindingScore): number => -Math.log1p(-loss);

/**
 * What each finding takes off a zone's index, the most first. Losses multiply, so that no finding has a share of its own: what is
 * missing from 100 is shared out by their part of -ln Z, in which they add up.
 */
export const contributionsOf = (zone: ZoneScore): readonly Contribution[] => {
  const whole = total(zone.findings, burdenOf);
  if (whole === 0) return [];
  return zone.findings
    .map((score) => ({ finding: score.finding, points: ((100 - zone.value) * burdenOf(score)) / whole }))
    .filter(({ points }) => points > 0)
    .sort((a, b) => b.points - a.points || (a.finding.kind < b.finding.kind ? -1 : 1));
};

/** The same for a work over its zones: each zone's points by its weight. They add up to 100 less the sculpture index. */
export const workContributions = (zones: readonly ZoneScore[]): readonly Contribution[] => {
  const weight = total(zones, weightOf);
  return zones
    .flatMap((zone) =>
      contributionsOf(zone).map((part) => ({ ...part, points: (part.points * weightOf(zone)) / weight })),
    )
    .sort((a, b) => b.points - a.points || (a.finding.zone < b.finding.zone ? -1 : 1));
};
