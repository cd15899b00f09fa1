import { addDays, dayRange, type SculptureRecord, type Thing } from '../record';
import { treatmentOf } from '../trade';
import { addMonths, halfway } from './months';
import { watchMonths } from './watchNumbers';

/** One look of the plan after a treatment. Each day belongs to the nearest look, so that every look counts once. */
export interface WatchMark {
  /** Months from the end of the treatment. */
  readonly months: number;
  readonly day: string;
  /** First and last day on which a round or look counts as this one. */
  readonly from: string;
  readonly until: string;
  /** 'missed': its time went by and nobody looked. */
  readonly state: 'done' | 'missed' | 'due' | 'to come';
  /** The day it was looked at; null where it was not. */
  readonly on: string | null;
}

/** What a plan rests on: a treatment that is over, in some zones (none named: all). */
export interface Treated {
  /** Thing name of the campaign or of the treatment. */
  readonly of: string;
  readonly ended: string;
  readonly zones: readonly string[];
}

const monthsUpTo = (count: number): readonly number[] => {
  const { months, thenEvery } = watchMonths;
  const last = months.at(-1) ?? 0;
  return Array.from({ length: count }, (_, i) => months[i] ?? last + thenEvery * (i - months.length + 1));
};

/** Days on which treated zones were seen: finished rounds that speak for the whole, and looks. */
export const daysSeen = (record: SculptureRecord, zones: readonly string[]): readonly string[] =>
  [
    ...record.rounds.filter(({ body }) => body.ended !== undefined && body.type !== 'incident'),
    ...record.looks.filter(({ body }) => zones.length === 0 || zones.includes(body.zone)),
  ]
    .map(({ body }: { readonly body: { readonly date: string } }) => body.date)
    .sort();

/** The looks after a treatment up to the first that is still to come: 1, 3, 6, 12 and 24 months, then yearly. */
export const watchPlan = (record: SculptureRecord, { ended, zones }: Treated, today: string): readonly WatchMark[] => {
  const seen = daysSeen(record, zones).filter((day) => day <= today);
  const marks: WatchMark[] = [];
  for (let i = 0; ; i++) {
    const [before = 0, months = 0, after = 0] = [0, ...monthsUpTo(i + 2)].slice(i);
    const [then, day, next] = [addMonths(ended, before), addMonths(ended, months), addMonths(ended, after)];
    const [from, until] = [addDays(halfway(then, day), 1), halfway(day, next)];
    const on = seen.find((one) => one >= from && one <= until) ?? null;
    const state = on ? 'done' : until < today ? 'missed' : from <= today ? 'due' : 'to come';
    marks.push({ months, day, from, until, state, on });
    if (state === 'to come') return marks;
  }
};

/** A round that left a zone out did not see the whole. Of a round whose visits are not at hand it is believed. */
const sawAll = (record: SculptureRecord, round: string, zones: readonly string[]): boolean => {
  const visits = record.visits.filter(({ body }) => body.round === round);
  const seen = new Set(visits.filter(({ body }) => body.state !== 'not looked').map(({ body }) => body.zone));
  return visits.length === 0 || zones.every((zone) => seen.has(zone));
};

/** Was the whole of the work seen between two days: a finished round, or a look at every zone? The last such day, or null. */
export const seenWhole = (
  record: SculptureRecord,
  zones: readonly string[],
  from: string,
  to: string,
): string | null => {
  const within = (date: string): boolean => date >= from && date <= to;
  const rounds = record.rounds
    .filter(({ body }) => body.ended !== undefined && body.type !== 'incident' && within(body.date))
    .filter((round) => sawAll(record, round.thing, zones))
    .map(({ body }) => body.date);
  const lastLook = zones.map((zone) =>
    record.looks
      .filter(({ body }) => body.zone === zone && within(body.date))
      .map(({ body }) => body.date)
      .sort()
      .at(-1),
  );
  const byLooks = lastLook.length > 0 && lastLook.every((day) => day !== undefined) ? lastLook : [];
  return [...rounds, ...byLooks].sort().at(-1) ?? null;
};

/** When a campaign's work was over; undefined while it is not. */
export const endOfCampaign = ({ body }: Thing<'campaign'>): string | undefined => body.ended ?? body.accepted;

/**
 * The first day of a campaign's work: as said, else that of the first treatment in its time that ends a series, else the day it was
 * over. Never the day it was opened where it is over: years of waxing may lie between.
 */
export const beganOf = (record: SculptureRecord, campaign: Thing<'campaign'>): string => {
  const { began, opened } = campaign.body;
  const ended = endOfCampaign(campaign);
  const done = record.treatments
    .filter(({ body }) => treatmentOf(body.type)?.breaksSeries && body.type !== 'cause removed')
    .map(({ body }) => dayRange(body.date).from)
    .filter((day) => day >= opened && (ended === undefined || day <= ended))
    .sort();
  return began ?? done[0] ?? ended ?? opened;
};
