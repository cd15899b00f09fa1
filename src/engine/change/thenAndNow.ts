import { areaOn, type Reason, type SculptureRecord, type Thing, zonesAt } from '../record';
import { type Scale, scaleOf } from '../trade';
import { comparable } from './comparable';
import { comparedZones } from './comparedZones';
import { doneBetween } from './doneBetween';
import { eyeReasons } from './eyeOfRound';
import { type FindingDraft, findingDraft } from './findingChange';
import { type Draft, weighPage } from './judge';
import { because } from './reasonCodes';
import type { Judgement, ThenAndNow } from './verdict';
import { workDraft } from './workChange';
import { zoneDraft } from './zoneChange';
import { type Rounds, unsettledReasons, zonePair } from './zonePair';

export interface ThenAndNowOptions {
  /** Weights other than the collection's own. */
  readonly scale?: Scale;
}

const roundOf = (record: SculptureRecord, name: string): Thing<'round'> => {
  const round = record.rounds.find((r) => r.thing === name);
  if (!round) throw new RangeError(`There is no round ${name} among this sculpture's rounds.`);
  return round;
};

/** Who looked makes a shared error. Where it was not said, two persons are assumed. */
const personReasons = (earlier: Thing<'round'>, later: Thing<'round'>): Reason[] => {
  const [a, b] = [earlier.body.surveyor, later.body.surveyor];
  if (a === '' || b === '') return [because('change: surveyor not said')];
  return a === b ? [] : [because('change: other surveyor', { earlier: a, later: b })];
};

/**
 * This round against an earlier one: each finding, each zone and the whole work, with how sure the difference is.
 * Rounds are thing names; an unknown one is an error of the caller. Turned around, worse and better change places.
 * Rounds of another kind or state are compared all the same, with the warning in `comparable`, and then nothing is clearlyWorse.
 */
export const thenAndNow = (
  record: SculptureRecord,
  earlierRound: string,
  laterRound: string,
  options: ThenAndNowOptions = {},
): ThenAndNow => {
  const [earlier, later] = [roundOf(record, earlierRound), roundOf(record, laterRound)];
  const scale = options.scale ?? scaleOf(record.scale);
  const alike = comparable(earlier, later);
  const person = personReasons(earlier, later);
  const turned = later.body.date < earlier.body.date;
  const rounds: Rounds = { earlier, later, turned, otherPerson: person.length > 0 };
  const [first, second] = turned ? [later, earlier] : [earlier, later];

  const pairs = comparedZones(record, first.body.date, second.body.date).map((zone) => zonePair(record, rounds, zone));
  const findings = pairs.flatMap((pair) => pair.series.map((series) => findingDraft(record, rounds, pair, series)));
  const zones = pairs.map((pair) => zoneDraft(record, rounds, pair, scale));
  const between = doneBetween(record, first, second, new Set(record.zones.map((z) => z.thing)));
  const areaNow = zonesAt(record, second.body.date).reduce((m2, zone) => m2 + areaOn(zone, second.body.date).m2, 0);
  const work = workDraft(record, rounds, zones, between, areaNow);

  const active = Object.values(work.active);
  const drafts: Draft[] = [...findings, ...zones, work.index, ...active].map(({ draft }) => draft);
  const page = weighPage(drafts, alike.ok);
  const judgement = new Map<Draft, Judgement>(drafts.map((draft, i) => [draft, page.judged[i] as Judgement]));
  const judged = <Rest extends object>({ draft, rest }: { draft: Draft; rest: Rest }): Rest & Judgement => ({
    ...rest,
    ...(judgement.get(draft) as Judgement),
  });

  return {
    earlier,
    later,
    comparable: alike,
    findings: findings.map((finding: FindingDraft) => judged(finding)),
    zones: zones.map(judged),
    sculpture: {
      index: judged(work.index),
      active: { green: judged(work.active.green), bare: judged(work.active.bare), scale: judged(work.active.scale) },
      zonesBoth: work.zonesBoth,
      zonesAll: work.zonesAll,
      areaShare: work.areaShare,
    },
    between,
    comparisons: page.comparisons,
    expectedByChance: page.expectedByChance,
    reasons: [
      ...alike.reasons,
      ...(alike.ok ? [] : [because('change: rounds not alike')]),
      ...person,
      ...eyeReasons(record, [earlier, later]),
      ...unsettledReasons(record, [earlier.thing, later.thing]),
    ],
  };
};
