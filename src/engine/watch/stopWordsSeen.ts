import { endOf, type SculptureRecord, seriesOf } from '../record';
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

/**
 * The stop words that stand: of each zone those of the last round that looked at it, whatever other zones a later round saw. Until the
 * conservator has spoken and a round saw it otherwise, such a zone is neither washed nor waxed. `record` holds all rounds.
 */
export const stopWordsStanding = (record: SculptureRecord): readonly StopWordSeen[] => {
  const dates = new Map(record.rounds.map(({ thing, body }) => [thing, body.date]));
  const last = new Map<string, string>();
  for (const { body } of record.visits) {
    const date = dates.get(body.round);
    if (date === undefined || (body.state !== 'found' && body.state !== 'nothing')) continue;
    if (date > (last.get(body.zone) ?? '')) last.set(body.zone, date);
  }
  const living = new Set(record.zones.filter((zone) => endOf(zone) === undefined).map(({ thing }) => thing));
  return stopWordsSeen(record, '').filter(({ zone, date }) => living.has(zone) && date >= (last.get(zone) ?? ''));
};
