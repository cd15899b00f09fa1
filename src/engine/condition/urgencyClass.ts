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
  /** Coatings proven to hold shorter from one to the next; undefined where nobody asked or none are recorded. */
  readonly holdShorter: boolean | undefined;
  /** Coating past the time it was expected to hold; undefined where too little is known of it. */
  readonly pastHold: boolean | undefined;
  /** Index forecast to fall below the action level by the next round; undefined where no trend stands. */
  readonly crossing: boolean | undefined;
  readonly isFirst: (score: FindingScore) => boolean;
}

interface Candidate {
  readonly level: Level;
  readonly reason: Reason;
}

const at = (level: number, reason: Reason): Candidate => ({ level: level as Level, reason });

const percent = (share: number): number => Math.round(share * 1000) / 10;

/**
 * Coverage from which a finding is one of "other active findings in the metal", of a kind whose row asks for care; 0 where it is one
 * whatever it covers, null where it is none.
 */
export const pressesFrom = ({ finding }: Pick<FindingScore, 'finding'>): number | null => {
  const row = kindOf(finding.kind);
  if (!row || finding.cleared || row.recommends === 0 || !groupsInMetal.includes(row.group)) return null;
  if (!inTheMetal({ finding }) || !isActive({ finding })) return null;
  if (row.measure !== 'area') return 0;
  return (finding.activity === 'active' ? constants.activeInMetal : constants.unclearInMetal).value;
};

const activeInMetal = (score: FindingScore): readonly Candidate[] => {
  const from = pressesFrom(score);
  const { kind } = score.finding;
  if (from === null) return [];
  if (from === 0) return [at(1, because('class: active in the metal, told by count or presence', { kind }))];
  if (!score.cover || score.cover.value < from) return [];
  return [at(1, because('class: active in the metal', { kind, percent: percent(score.cover.value) }))];
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
  [
    { what: 'change', known: facts.clearlyWorse },
    { what: 'hold', known: facts.holdShorter },
    { what: 'expected hold', known: facts.pastHold },
    { what: 'forecast', known: facts.crossing },
  ].flatMap(({ what, known }) => (known === undefined ? [because('not yet known', { what })] : []));

/** Urgency class of a zone: how soon something is due. The highest that fits. */
export const urgencyOf = (zone: ZoneScore, scale: Scale, facts: UrgencyFacts): Urgency => {
  const findings = present(zone);
  const under = zone.value < scale.actionLevel;
  const candidates: readonly Candidate[] = [
    ...byDanger(facts),
    ...findings.flatMap((score) => byKind(score, facts.isFirst(score))),
    ...(facts.clearlyWorse ? [at(2, because('class: green clearly worse'))] : []),
    ...(facts.holdShorter ? [at(2, because('class: hold proven shorter'))] : []),
    ...(facts.crossing
      ? [at(2, because('class: forecast to cross the action level', { actionLevel: scale.actionLevel }))]
      : []),
    ...(facts.pastHold ? [at(1, because('class: coating past its expected hold'))] : []),
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
