import { dangersWithoutRound, levelOf, type NeedOf } from '../condition';
import type { Figure, SculptureRecord } from '../record';

/** What the list of sculptures shows of one. */
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

/** `need` is null where nobody has looked yet. */
export const summaryOf = (record: SculptureRecord, need: NeedOf | null): SculptureSummary => {
  const common = {
    openRound: record.rounds.filter((r) => r.body.ended === undefined).at(-1)?.thing ?? null,
    zones: record.zones.filter((z) => !z.body.split && !z.body.joined).length,
    rounds: record.rounds.length,
    unsettled: record.unsettled.length,
  };
  const round = need && record.rounds.find(({ thing }) => thing === need.score.round);
  if (!need || !round) {
    const levels = { condition: null, urgency: null, recommendation: null };
    const dangers = dangersWithoutRound(record).length;
    return { ...common, ...levels, round: null, index: null, seenShare: 0, scale: '', dangers };
  }
  const { score, classes } = need;
  const { value, low, high, reasons } = score;
  const { date, type, ended } = round.body;
  return {
    ...common,
    round: { thing: round.thing, date, type, ended: ended !== undefined },
    index: value === null || low === null || high === null ? null : { value, low, high, reasons },
    seenShare: score.seenShare,
    condition: levelOf(classes.sculpture, 'condition'),
    urgency: levelOf(classes.sculpture, 'urgency'),
    recommendation: levelOf(classes.sculpture, 'recommendation'),
    dangers: classes.dangers.length,
    scale: score.scale,
  };
};
