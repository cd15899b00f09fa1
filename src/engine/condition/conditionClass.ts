import type { Reason } from '../record';
import { activityOf, kindOf, type Level, originOf } from '../trade';
import { constants } from './constants';
import type { FindingScore } from './findingLoss';
import { because } from './reasonCodes';
import type { ZoneScore } from './zoneIndex';

/** A class and why. Null where there is nothing to judge it by. Proposed by rule; a named person sets it. */
export interface Proposal {
  readonly level: Level | null;
  readonly reasons: readonly Reason[];
}

/** Levels with their reasons: the highest wins and keeps the reasons that reach it. */
export const highest = (
  candidates: readonly { readonly level: Level; readonly reason: Reason }[],
  otherwise: Reason,
): Proposal => {
  const level = Math.max(0, ...candidates.map((candidate) => candidate.level)) as Level;
  const reasons = candidates.filter((candidate) => candidate.level === level).map(({ reason }) => reason);
  return { level, reasons: level === 0 ? [otherwise] : reasons };
};

/** What is there: a finding looked for and gone is none. */
export const present = (zone: Pick<ZoneScore, 'findings'>): readonly FindingScore[] =>
  zone.findings.filter(({ finding }) => !finding.cleared);

export const isActive = ({ finding }: Pick<FindingScore, 'finding'>): boolean => !activityOf(finding.activity).quiet;

/** In the metal: neither dirt nor a stain from above. */
export const inTheMetal = ({ finding }: Pick<FindingScore, 'finding'>): boolean =>
  originOf(finding.origin).hazard === 'kind';

/** A stop word, whatever was thought of its origin. `firstTime` says whether this series was not there in any earlier round. */
export const isStop = ({ finding }: FindingScore, firstTime: boolean): boolean => {
  const stop = kindOf(finding.kind)?.stop;
  return stop === 'always' || (stop === 'first time' && firstTime);
};

/** Dirt has no hazard and a stain its own, so only what is in the metal gets here. */
const atStake = (score: FindingScore): boolean =>
  isActive(score) && score.finding.severity === 'severe' && score.parts.hazard >= constants.metalAtStake.value;

/** CC3 by the index, or by one severe active finding where metal is at stake. */
export const isStrong = (zone: ZoneScore): boolean =>
  zone.value < constants.condition2From.value || present(zone).some(atStake);

/** The class an index alone would give, with its limit; an index of 0 to 100 with findings in it. */
export const conditionByIndex = (index: number): { readonly level: Level; readonly reason: Reason } => {
  const slight = constants.condition1From.value;
  const plain = constants.condition2From.value;
  if (index >= slight) return { level: 1, reason: because('class: index at or over', { index, limit: slight }) };
  if (index >= plain) return { level: 2, reason: because('class: index under', { index, limit: slight }) };
  return { level: 3, reason: because('class: index under', { index, limit: plain }) };
};

/** Condition class of a zone: how strong the visible signs are. `isFirst` tells of a kind whether it was never there before. */
export const conditionOf = (zone: ZoneScore, isFirst: (score: FindingScore) => boolean): Proposal => {
  const findings = present(zone);
  if (findings.length === 0) return { level: 0, reasons: [because('class: no finding')] };
  const stops = findings
    .filter((score) => isStop(score, isFirst(score)))
    .map(({ finding }) => ({
      level: constants.stopCondition.value as Level,
      reason: because('class: stop word', { kind: finding.kind }),
    }));
  const stakes = findings.filter(atStake).map(({ finding, parts }) => ({
    level: 3 as Level,
    reason: because('class: severe, active, metal at stake', { kind: finding.kind, hazard: parts.hazard }),
  }));
  return highest([conditionByIndex(zone.value), ...stops, ...stakes], because('class: no finding'));
};
