import { type SculptureRecord, seriesOf } from '../record';
import { kindOf } from '../trade';

export interface StopWordSeen {
  readonly zone: string;
  /** Code of trade/kinds. */
  readonly kind: string;
  /** Day of the round. */
  readonly date: string;
}

/**
 * Every stop word judged in a round of that day or later, the latest first. Some kinds are one only when they were not there before.
 * `record` holds all rounds.
 */
export const stopWordsSeen = (record: SculptureRecord, since: string): readonly StopWordSeen[] => {
  const dates = new Map(record.rounds.map(({ thing, body }) => [thing, body.date]));
  const first = new Map<string, string>();
  const rows = record.findings
    .filter(({ body }) => !body.cleared && body.carriedFrom === undefined)
    .map(({ body }) => ({
      body,
      date: dates.get(body.round) ?? '',
      series: seriesOf(body.zone, body.kind, body.origin),
    }))
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  for (const { series, date } of rows) if (!first.has(series)) first.set(series, date);
  return rows
    .filter(({ body, date, series }) => {
      const stop = kindOf(body.kind)?.stop;
      return date >= since && (stop === 'always' || (stop === 'first time' && first.get(series) === date));
    })
    .map(({ body, date }) => ({ zone: body.zone, kind: body.kind, date }))
    .reverse();
};
