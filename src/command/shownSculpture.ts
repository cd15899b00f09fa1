import {
  type Classes,
  dangersWithoutRound,
  type PersonDanger,
  type RoundClasses,
  type SculptureScore,
  type ZoneScore,
} from '../engine/condition';
import type { Figure, SculptureRecord } from '../engine/record';
import type { ReckonedWork } from './reckoned';
import type { Say } from './said';
import type { shownChanges } from './shownChanges';

type Changes = Pick<ReturnType<typeof shownChanges>, 'sinceLast' | 'notCompared'>;

/** The same fields for a work nobody has walked round yet. */
const nothingYet = {
  round: null,
  index: null,
  withCarried: null,
  seenShare: 0,
  ifUnseenBest: null,
  ifUnseenWorst: null,
  weakest: null,
  active: null,
  shareCC3: null,
  scale: null,
  classes: null,
  zones: [],
  change: null,
  notCompared: [],
} as const;

/** One work by its latest round; one without a round has its name and `round: null`. */
export const shownSculpture = ({ record, second }: ReckonedWork, { sinceLast, notCompared }: Changes, said: Say) => {
  const { sculpture, rounds } = record;
  const { need } = second;
  const who = { id: sculpture.thing, number: sculpture.body.number, title: sculpture.body.title };
  const dangers = (standing: readonly PersonDanger[]) =>
    standing.map(({ reason, ...danger }) => ({ ...danger, reasons: said([reason]) }));
  const round = rounds.find(({ thing }) => thing === need?.score.round);
  if (!round || !need) return { ...nothingYet, ...who, dangers: dangers(dangersWithoutRound(record)) };
  const { score, classes } = need;
  const { type, date, wet, washed } = round.body;
  const figure = ({ reasons, ...rest }: Figure) => ({ ...rest, reasons: said(reasons) });
  const { green, bare, scale } = score.active;
  return {
    ...who,
    round: { id: round.thing, type, date, wet, washed, ended: round.body.ended ?? null },
    index:
      score.value === null
        ? null
        : { value: score.value, low: score.low, high: score.high, reasons: said(score.reasons) },
    withCarried: score.withCarried ? figure(score.withCarried) : null,
    seenShare: score.seenShare,
    ifUnseenBest: score.ifUnseenBest,
    ifUnseenWorst: score.ifUnseenWorst,
    weakest: score.weakest?.zone ?? null,
    active: { green: figure(green), bare: figure(bare), scale: figure(scale) },
    shareCC3: score.shareCC3,
    scale: score.scale,
    classes: shownClasses(classes.sculpture, said),
    dangers: dangers(classes.dangers),
    zones: zonesOf(record, score, classes, sinceLast, said),
    change: sinceLast,
    notCompared,
  };
};

const zonesOf = (
  record: SculptureRecord,
  score: SculptureScore,
  classes: RoundClasses,
  change: Changes['sinceLast'],
  said: Say,
) => {
  const scored = new Map(score.zones.map((zone) => [zone.zone, zone]));
  const unscored = new Map(score.unscored.map((zone) => [zone.zone, zone]));
  return record.zones
    .filter(({ thing }) => scored.has(thing) || unscored.has(thing))
    .map(({ thing, body }) => {
      const zone = scored.get(thing);
      const not = unscored.get(thing);
      const own = classes.zones.find(({ about }) => about === thing);
      return {
        id: thing,
        letter: body.letter,
        name: body.name,
        standing: zone ? 'seen' : (not?.standing ?? 'not visited'),
        m2: zone?.area.m2 ?? not?.m2 ?? null,
        index: zone ? { value: zone.value, low: zone.low, high: zone.high, reasons: said(zone.reasons) } : null,
        notScored: said(not?.reasons ?? []),
        findings: zone ? findingsOf(zone, said) : [],
        classes: own ? shownClasses(own, said) : null,
        verdict: change?.zones.find((z) => z.zonesNow.includes(thing))?.verdict ?? null,
      };
    });
};

const findingsOf = (zone: ZoneScore, said: Say) =>
  zone.findings.map(({ finding, loss, low, high, parts, reasons }) => ({
    kind: finding.kind,
    origin: finding.origin,
    coverage: finding.coverage ?? null,
    count: finding.count ?? null,
    severity: finding.severity,
    activity: finding.activity,
    cleared: finding.cleared ?? false,
    loss,
    low,
    high,
    parts,
    reasons: said(reasons),
  }));

const shownClasses = ({ condition, urgency, recommendation, set, stopWords }: Classes, said: Say) => ({
  condition: { level: condition.level, reasons: said(condition.reasons) },
  urgency: {
    level: urgency.level,
    reasons: said(urgency.reasons),
    notYetKnown: said(urgency.notYetKnown),
  },
  recommendation: {
    level: recommendation.level,
    reasons: said(recommendation.reasons),
    askConservator: said(recommendation.askConservator),
  },
  set: set ?? null,
  stopWords,
});
