import type { BodyOf, Reason } from '../record';
import { beadings, kindOf, type Level, type Scale } from '../trade';
import { highest, inTheMetal, isActive, isStop, type Proposal, present } from './conditionClass';
import { constants, groupsInMetal } from './constants';
import type { FindingScore } from './findingLoss';
import type { PersonDanger } from './personChecks';
import { because } from './reasonCodes';
import type { ZoneScore } from './zoneIndex';

/** A class, and what would speak to it and is not known yet. */
export interface Urgency extends Proposal {
  readonly notYetKnown: readonly Reason[];
}

export interface UrgencyFacts {
  readonly dangers: readonly PersonDanger[];
  readonly beading: BodyOf<'visit'>['beading'];
  /** Green in the metal clearly worse than the last comparable round; undefined where nobody compared. */
  readonly clearlyWorse: boolean | undefined;
  readonly isFirst: (score: FindingScore) => boolean;
}

interface Candidate {
  readonly level: Level;
  readonly reason: Reason;
}

const at = (level: number, reason: Reason): Candidate => ({ level: level as Level, reason });

const percent = (share: number): number => Math.round(share * 1000) / 10;

/** A kind whose row asks for care, of a group in the metal: "other active findings in the metal". */
const activeInMetal = (score: FindingScore): readonly Candidate[] => {
  const { finding, cover } = score;
  const row = kindOf(finding.kind);
  if (!row || row.recommends === 0 || !groupsInMetal.includes(row.group)) return [];
  if (!inTheMetal(score) || !isActive(score)) return [];
  if (row.measure !== 'area') {
    return [at(1, because('class: active in the metal, told by count or presence', { kind: row.id }))];
  }
  const from = finding.activity === 'active' ? constants.activeInMetal : constants.unclearInMetal;
  if (!cover || cover.value < from.value) return [];
  return [at(1, because('class: active in the metal', { kind: row.id, percent: percent(cover.value) }))];
};

/** What the kind's own row says. A stop word is heard whatever its activity was thought to be; the others where they are not at rest. */
const byKind = (score: FindingScore, isFirst: boolean): readonly Candidate[] => {
  const row = kindOf(score.finding.kind);
  if (!row) return [];
  const stop = isStop(score, isFirst);
  const own =
    row.urgency && (stop || isActive(score))
      ? [at(row.urgency, because('class: kind is urgent', { kind: row.id }))]
      : [];
  return stop ? [...own, at(constants.stopUrgency.value, because('class: stop word', { kind: row.id }))] : own;
};

const byBeading = (beading: UrgencyFacts['beading']): readonly Candidate[] => {
  const row = beadings.find(({ id }) => id === beading);
  return row && row.proposes > 0 ? [at(row.proposes, because('class: beading', { beading: row.id }))] : [];
};

const byDanger = ({ dangers }: UrgencyFacts): readonly Candidate[] => dangers.map(({ reason }) => at(3, reason));

/** What would raise a class and cannot be told yet: said, so that silence is not read as "no". */
const openQuestions = (facts: UrgencyFacts): readonly Reason[] =>
  [...(facts.clearlyWorse === undefined ? ['change'] : []), 'hold', 'expected hold', 'forecast'].map((what) =>
    because('not yet known', { what }),
  );

/** Urgency class of a zone: how soon something is due. The highest that fits. */
export const urgencyOf = (zone: ZoneScore, scale: Scale, facts: UrgencyFacts): Urgency => {
  const findings = present(zone);
  const under = zone.value < scale.actionLevel;
  const candidates: readonly Candidate[] = [
    ...byDanger(facts),
    ...findings.flatMap((score) => byKind(score, facts.isFirst(score))),
    ...(facts.clearlyWorse ? [at(2, because('class: green clearly worse'))] : []),
    ...(under
      ? [
          at(
            constants.actionUrgency.value,
            because('class: index under action level', { index: zone.value, actionLevel: scale.actionLevel }),
          ),
        ]
      : []),
    ...findings.flatMap(activeInMetal),
    ...byBeading(facts.beading),
  ];
  return { ...highest(candidates, because('class: nothing presses')), notYetKnown: openQuestions(facts) };
};

/** Of a zone nobody judged this time only a danger to people is known. */
export const urgencyOfUnjudged = (dangers: readonly PersonDanger[], why: readonly Reason[]): Urgency =>
  dangers.length > 0
    ? { ...highest(byDanger({ dangers } as UrgencyFacts), because('class: nothing presses')), notYetKnown: [] }
    : { level: null, reasons: why, notYetKnown: [] };
