import { findingsOf, seriesOf } from '../../engine/record';
import { date, share, w } from '../../words';
import { type PaperPiece, say, table } from '../layout';
import { kindAndOrigin } from './kindAndOrigin';
import type { LatestOnPaper } from './latestOnPaper';

const words = w.paperInsurer;

interface Row {
  readonly name: string;
  readonly zones: readonly string[];
  /** First day on which a round names it in one of these zones. */
  readonly since: string;
}

/** Findings of the latest round by kind, with the first day the record knows each. */
export const foundBefore = (latest: LatestOnPaper): PaperPiece => {
  const rows = rowsOf(latest);
  if (rows.length === 0) return say(words.foundNone);
  const { finding, zones, since } = words.foundColumns;
  return [
    table(
      words.found,
      [{ head: finding }, { head: zones }, { head: since, kind: 'narrow' }],
      rows.map((row) => [row.name, row.zones.join(', '), date(row.since)]),
    ),
    say(words.foundHow, 'small'),
  ];
};

const rowsOf = ({ record, round, zones, scoreOf }: LatestOnPaper): readonly Row[] => {
  const first = firstDays(record);
  const rows = new Map<string, Row>();
  for (const zone of zones.filter(({ thing }) => scoreOf(thing)))
    for (const { body } of findingsOf(record, round.thing, zone.thing)) {
      if (body.cleared) continue;
      const name = kindAndOrigin(body);
      const since = first.get(seriesOf(body.zone, body.kind, body.origin)) ?? round.body.date;
      const at = body.coverage
        ? w.paperCondition.seenZone(zone.body.letter, share(body.coverage.value))
        : zone.body.letter;
      const was = rows.get(name);
      rows.set(name, {
        name,
        zones: [...(was?.zones ?? []), at],
        since: was && was.since < since ? was.since : since,
      });
    }
  return [...rows.values()].sort((a, b) => b.zones.length - a.zones.length);
};

const firstDays = (record: LatestOnPaper['record']): ReadonlyMap<string, string> => {
  const days = new Map(record.rounds.map(({ thing, body }) => [thing, body.date]));
  const first = new Map<string, string>();
  for (const { body } of record.findings) {
    const day = days.get(body.round);
    if (!day || body.cleared) continue;
    const series = seriesOf(body.zone, body.kind, body.origin);
    const was = first.get(series);
    if (was === undefined || day < was) first.set(series, day);
  }
  return first;
};
