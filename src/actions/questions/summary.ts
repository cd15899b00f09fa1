import { clearlyWorseGreen, previousComparable, thenAndNow } from '../../engine/change';
import { classesOf, levelOf, type RoundClasses, type SculptureScore, scoreRound } from '../../engine/condition';
import { type Figure, latestRound, type SculptureRecord, type Thing, zonesAt } from '../../engine/record';

/** What the list of sculptures shows of one. Small, kept beside the record under the counters it was worked out from. */
export interface SculptureSummary {
  /** The round the figures come from: the last finished one; where none is finished, the running one. Null: none yet. */
  readonly round: {
    readonly thing: string;
    readonly date: string;
    readonly type: string;
    readonly ended: boolean;
  } | null;
  /** A round begun and not ended. */
  readonly openRound: string | null;
  /** 0 to 100; null where no zone was looked at. */
  readonly index: Figure | null;
  /** Share of the area seen, 0 to 1. */
  readonly seenShare: number;
  /** As set by a person, else as proposed. */
  readonly condition: 0 | 1 | 2 | 3 | null;
  readonly urgency: 0 | 1 | 2 | 3 | null;
  readonly recommendation: 0 | 1 | 2 | 3 | null;
  /** Living zones. */
  readonly zones: number;
  readonly rounds: number;
  /** Dangers to people that stand. */
  readonly dangers: number;
  /** Things with two versions. */
  readonly unsettled: number;
  readonly scale: string;
}

/** The latest round by need, with what it came to, and a record of no more than that round. */
export interface LatestNeed {
  readonly record: SculptureRecord;
  readonly score: SculptureScore;
  readonly classes: RoundClasses;
}

/** Classes of a round, with what changed since the last comparable one heard; where there is none, nobody compared. */
export const classesIn = (record: SculptureRecord, round: string, score: SculptureScore): RoundClasses => {
  const { round: previous } = previousComparable(record, round);
  const clearlyWorse = previous && clearlyWorseGreen(thenAndNow(record, previous.thing, round));
  return classesOf(record, round, { score, ...(clearlyWorse ? { clearlyWorse } : {}) });
};

export const summarise = (record: SculptureRecord): { summary: SculptureSummary; need: LatestNeed | null } => {
  const latest = latestRound(record);
  const open = record.rounds.filter((r) => r.body.ended === undefined).at(-1);
  const common = {
    openRound: open?.thing ?? null,
    zones: record.zones.filter((z) => !z.body.split && !z.body.joined).length,
    rounds: record.rounds.length,
    unsettled: record.unsettled.length,
  };
  if (!latest) {
    const dangers = record.personChecks.filter((check) => !check.body.closed).length;
    const none = {
      round: null,
      index: null,
      seenShare: 0,
      condition: null,
      urgency: null,
      recommendation: null,
      scale: '',
    };
    return { summary: { ...common, ...none, dangers }, need: null };
  }
  const score = scoreRound(record, latest.thing);
  const classes = classesIn(record, latest.thing, score);
  const { value, low, high, reasons } = score;
  const { date, type, ended } = latest.body;
  const summary: SculptureSummary = {
    ...common,
    round: { thing: latest.thing, date, type, ended: ended !== undefined },
    index: value === null || low === null || high === null ? null : { value, low, high, reasons },
    seenShare: score.seenShare,
    condition: levelOf(classes.sculpture, 'condition'),
    urgency: levelOf(classes.sculpture, 'urgency'),
    recommendation: levelOf(classes.sculpture, 'recommendation'),
    dangers: classes.dangers.length,
    scale: score.scale,
  };
  return { summary, need: { record: onlyRound(record, latest), score, classes } };
};

/** The record as far as the list of needs reads it: one round, its zones and what was seen in it. */
const onlyRound = (record: SculptureRecord, round: Thing<'round'>): SculptureRecord => {
  const inRound = (t: { readonly body: { readonly round: string } }) => t.body.round === round.thing;
  return {
    ...record,
    zones: zonesAt(record, round.body.date),
    rounds: [round],
    visits: record.visits.filter(inRound),
    findings: record.findings.filter(inRound),
    reratings: [],
    classSets: record.classSets.filter(inRound),
    looks: [],
    treatments: record.treatments,
  };
};
