import { type BodyOf, type Reason, type SculptureRecord, seriesOf, type Thing, visitOf } from '../record';
import { type Level, type Scale, scaleOf } from '../trade';
import { conditionByIndex, conditionOf, highest, isStop, type Proposal, present } from './conditionClass';
import { constants } from './constants';
import type { FindingScore } from './findingLoss';
import { dangersAt, type PersonDanger } from './personChecks';
import { because } from './reasonCodes';
import { type Recommendation, recommendationOf } from './recommendationClass';
import { type SculptureScore, scoreRound } from './sculptureIndex';
import { type Urgency, urgencyOf, urgencyOfUnjudged } from './urgencyClass';
import type { ZoneScore } from './zoneIndex';

/** The three classes of a zone or a sculpture, proposed, and as a named person set them. They are told apart, never averaged. */
export interface Classes {
  /** Thing name of the zone or the sculpture. */
  readonly about: string;
  readonly condition: Proposal;
  readonly urgency: Urgency;
  readonly recommendation: Recommendation;
  /** A class left out there stays as proposed. */
  readonly set?: BodyOf<'classSet'>;
  /** Ask the conservator, do not wash or wax yet: kinds of the stop words seen. */
  readonly stopWords: readonly string[];
}

export interface RoundClasses {
  readonly round: string;
  readonly sculpture: Classes;
  readonly zones: readonly Classes[];
  /** What could hurt someone, apart from metal. */
  readonly dangers: readonly PersonDanger[];
}

export interface ClassOptions {
  readonly scale?: Scale;
  readonly score?: SculptureScore;
  /** Zones whose green in the metal is clearly worse than in the last comparable round, by engine/change. Left out: nobody compared. */
  readonly clearlyWorse?: ReadonlySet<string>;
  /** By zone; a zone left out: too little is known of it to say. Left out altogether: nobody asked. */
  readonly holdShorter?: ReadonlyMap<string, boolean>;
  readonly pastHold?: ReadonlyMap<string, boolean>;
  readonly crossing?: ReadonlyMap<string, boolean>;
}

/** The level that holds: set by a person, else proposed. */
export const levelOf = (classes: Classes, which: 'condition' | 'urgency' | 'recommendation'): Level | null =>
  (classes.set?.[which] as Level | undefined) ?? classes[which].level;

/** True for a finding whose series was not there, judged and not cleared, in any round of an earlier date. */
const firstTimeIn = (record: SculptureRecord, round: Thing<'round'>) => {
  const earlier = new Set(record.rounds.filter(({ body }) => body.date < round.body.date).map(({ thing }) => thing));
  const series = new Set(
    record.findings
      .filter(({ body }) => earlier.has(body.round) && !body.cleared)
      .map(({ body }) => seriesOf(body.zone, body.kind, body.origin)),
  );
  return ({ finding }: FindingScore): boolean => !series.has(seriesOf(finding.zone, finding.kind, finding.origin));
};

const setFor = (record: SculptureRecord, round: string, about: string): Pick<Classes, 'set'> => {
  const found = record.classSets.find(({ body }) => body.round === round && body.about === about);
  return found ? { set: found.body } : {};
};

const strongest = <P extends Proposal>(zones: readonly Classes[], of: (zone: Classes) => P): Proposal =>
  highest(
    zones.flatMap((zone) => {
      const { level } = of(zone);
      return level ? [{ level, reason: because('class: highest of its zones', { zone: zone.about }) }] : [];
    }),
    because('class: nothing presses'),
  );

/** The whole is no mean of its parts: never more than one class better than its weakest zone, and a stop word anywhere is heard. */
const wholeCondition = (score: SculptureScore, zones: readonly Classes[]): Proposal => {
  const judged = zones.filter(({ condition }) => condition.level !== null);
  if (score.value === null || judged.length === 0)
    return { level: null, reasons: [because('class: no zone to judge')] };
  const byIndex = judged.every(({ condition }) => condition.level === 0) ? [] : [conditionByIndex(score.value)];
  const pulls = judged.flatMap(({ about, condition }) => {
    const level = condition.level ?? 0;
    return level > 1
      ? [
          {
            level: (level - 1) as Level,
            reason: because('class: weakest zone pulls down', { zone: about, condition: level }),
          },
        ]
      : [];
  });
  const stops = judged.flatMap(({ stopWords }) =>
    stopWords.map((kind) => ({
      level: constants.stopCondition.value as Level,
      reason: because('class: stop word', { kind }),
    })),
  );
  return highest([...byIndex, ...pulls, ...stops], because('class: no finding'));
};

const wholeAsks = (score: SculptureScore): readonly Reason[] => {
  const byShare = score.shareCC3 >= constants.sculptureAsksFrom.value;
  const byIndex = score.value !== null && score.value < constants.condition2From.value;
  return [
    ...(byShare ? [because('class: ask whether major treatment is due', { why: 'share', value: score.shareCC3 })] : []),
    ...(byIndex ? [because('class: ask whether major treatment is due', { why: 'index', value: score.value })] : []),
  ];
};

const wholeUrgency = (zones: readonly Classes[], dangers: readonly PersonDanger[]): Urgency => {
  const ofWhole = dangers.filter(({ zone }) => zone === undefined || !zones.some(({ about }) => about === zone));
  if (ofWhole.length > 0) return urgencyOfUnjudged(ofWhole, []);
  const known = zones.filter(({ urgency }) => urgency.level !== null);
  if (known.length === 0) return { level: null, reasons: [because('class: no zone to judge')], notYetKnown: [] };
  return { ...strongest(known, ({ urgency }) => urgency), notYetKnown: known[0]?.urgency.notYetKnown ?? [] };
};

/** Classes of every zone of a round and of the sculpture. `round` is a thing name. */
export const classesOf = (record: SculptureRecord, round: string, options: ClassOptions = {}): RoundClasses => {
  const scale = options.scale ?? scaleOf(record.scale);
  const score = options.score ?? scoreRound(record, round, { scale });
  const here = record.rounds.find(({ thing }) => thing === round);
  if (!here) throw new RangeError(`There is no round ${round} among this sculpture's rounds.`);
  const dangers = dangersAt(record, here);
  const isFirst = firstTimeIn(record, here);
  const dangersIn = (zone: string) => dangers.filter((danger) => danger.zone === zone);

  const judged = (zone: ZoneScore): Classes => {
    const beading = visitOf(record, round, zone.zone)?.body.beading;
    const facts = {
      clearlyWorse: options.clearlyWorse?.has(zone.zone),
      holdShorter: options.holdShorter?.get(zone.zone),
      pastHold: options.pastHold?.get(zone.zone),
      crossing: options.crossing?.get(zone.zone),
    };
    return {
      about: zone.zone,
      condition: conditionOf(zone, isFirst),
      urgency: urgencyOf(zone, scale, { ...facts, dangers: dangersIn(zone.zone), beading, isFirst }),
      recommendation: recommendationOf(zone, beading),
      ...setFor(record, round, zone.zone),
      stopWords: present(zone)
        .filter((one) => isStop(one, isFirst(one)))
        .map(({ finding }) => finding.kind),
    };
  };
  const unjudged = (zone: string, why: readonly Reason[]): Classes => ({
    about: zone,
    condition: { level: null, reasons: why },
    urgency: urgencyOfUnjudged(dangersIn(zone), why),
    recommendation: { level: null, reasons: why, askConservator: [] },
    ...setFor(record, round, zone),
    stopWords: [],
  });

  const zones = [...score.zones.map(judged), ...score.unscored.map(({ zone, reasons }) => unjudged(zone, reasons))];
  const known = zones.filter(({ recommendation }) => recommendation.level !== null);
  const recommendation: Proposal =
    known.length > 0
      ? strongest(known, (zone) => zone.recommendation)
      : { level: null, reasons: [because('class: no zone to judge')] };
  return {
    round,
    dangers,
    zones,
    sculpture: {
      about: record.sculpture.thing,
      condition: wholeCondition(score, zones),
      urgency: wholeUrgency(zones, dangers),
      recommendation: { ...recommendation, askConservator: wholeAsks(score) },
      ...setFor(record, round, record.sculpture.thing),
      stopWords: [...new Set(zones.flatMap(({ stopWords }) => stopWords))],
    },
  };
};
