import { previousComparable, type ThenAndNow, thenAndNow } from '../../engine/change';
import { classesOf, levelOf, type SculptureScore, scoreRound } from '../../engine/condition';
import type { WorkOnPaper } from '../../engine/reckoning';
import { type BodyOf, latestRound, type SculptureRecord, type Thing } from '../../engine/record';
import type { Level } from '../../engine/trade';
import { thingsIn } from '../reading';

/** One work as its year is told. */
export interface WorkInYear {
  readonly work: WorkOnPaper;
  /** As it was known at the end of that year. */
  readonly record: SculptureRecord;
  /** Undefined where no round was walked in the year. */
  readonly round?: Thing<'round'>;
  readonly score?: SculptureScore;
  /** How soon something is due: set by a person, else proposed. */
  readonly urgency?: Level | null;
  /** The round before that it may be compared with, and its figures. */
  readonly before?: SculptureScore;
  readonly change?: ThenAndNow;
  readonly verdict?: BodyOf<'yearVerdict'>;
}

/** A record never changes, so what two rounds of it come to against each other is worked out once and forgotten with it. */
const compared = new WeakMap<SculptureRecord, Map<string, ThenAndNow>>();

export const comparedRounds = (record: SculptureRecord, earlier: string, later: string): ThenAndNow => {
  const already = compared.get(record) ?? new Map<string, ThenAndNow>();
  compared.set(record, already);
  const pair = `${earlier} ${later}`;
  const found = already.get(pair) ?? thenAndNow(record, earlier, later);
  already.set(pair, found);
  return found;
};

/** The same record up to the end of a year, the same thing each time it is asked for. */
const until = new WeakMap<SculptureRecord, Map<number, SculptureRecord>>();

const upTo = (record: SculptureRecord, year: number): SculptureRecord => {
  const rounds = record.rounds.filter(({ body }) => Number(body.date.slice(0, 4)) <= year);
  if (rounds.length === record.rounds.length) return record;
  const already = until.get(record) ?? new Map<number, SculptureRecord>();
  until.set(record, already);
  const found = already.get(year) ?? { ...record, rounds };
  already.set(year, found);
  return found;
};

/** The last round of the year, with what it came to. Later rounds are not known to it. */
export const workInYear = (work: WorkOnPaper, year: number): WorkInYear => {
  const record = upTo(work.record, year);
  const verdict = thingsIn(work.within, 'yearVerdict').find(({ body }) => body.year === year)?.body;
  const latest = latestRound(record);
  const told = { work, record, ...(verdict ? { verdict } : {}) };
  if (!latest?.body.date.startsWith(String(year))) return told;
  const need = work.figures?.need?.score.round === latest.thing ? work.figures.need : undefined;
  const score = need?.score ?? scoreRound(record, latest.thing);
  const classes = need?.classes ?? classesOf(record, latest.thing, { score });
  const { round: previous } = previousComparable(record, latest.thing);
  return {
    ...told,
    round: latest,
    score,
    urgency: levelOf(classes.sculpture, 'urgency'),
    ...(previous
      ? { before: scoreRound(record, previous.thing), change: comparedRounds(record, previous.thing, latest.thing) }
      : {}),
  };
};
