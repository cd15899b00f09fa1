import {
  areaOn,
  assemble,
  type BodyOf,
  byWithin,
  type Entry,
  gather,
  type SculptureRecord,
  type Thing,
} from '../record';
import { kindOf } from '../trade';

/**
 * A cell no spreadsheet takes for a formula: one that begins with = + - @ or a control character gets an apostrophe before it
 * (OWASP, "CSV Injection"; the wide forms of the signs too, which some spreadsheets fold into the narrow ones). Quoted as RFC 4180
 * asks.
 */
const cell = (value: string | number | undefined): string => {
  if (typeof value === 'number') return String(value);
  const text = value ?? '';
  // biome-ignore lint/suspicious/noControlCharactersInRegex: a control character in front is what is looked for.
  const safe = /^\s*[=+\-@\u0000-\u001f\uff1d\uff0b\uff0d\uff20]/.test(text) ? `'${text}` : text;
  return /["\r\n,;]/.test(safe) || safe !== safe.trim() ? `"${safe.replaceAll('"', '""')}"` : safe;
};

const percent = (share: number | undefined): number | undefined =>
  share === undefined ? undefined : Math.round(share * 100_000) / 1000;

interface Row {
  readonly record: SculptureRecord;
  readonly round: Thing<'round'>;
  readonly zone: Thing<'zone'>;
  readonly finding: Thing<'finding'>;
}

const lookedHow = ({ body }: Thing<'finding'>): string =>
  body.carriedFrom ? 'carried, not judged again' : body.cleared ? 'looked for, no longer there' : 'seen';

type Coverage = NonNullable<BodyOf<'finding'>['coverage']>;
const coverage = (end: (c: Coverage) => number) => (r: Row) =>
  percent(r.finding.body.coverage && end(r.finding.body.coverage));

/** Column by column: its head, and what stands in it. Coverages in percent of the zone, areas in m2. */
const columns: readonly (readonly [string, (row: Row) => string | number | undefined])[] = [
  ['sculpture number', (r) => r.record.sculpture.body.number],
  ['sculpture', (r) => r.record.sculpture.body.title],
  ['round date', (r) => r.round.body.date],
  ['round type', (r) => r.round.body.type],
  ['surface', (r) => r.round.body.wet],
  ['washed', (r) => r.round.body.washed],
  ['zone', (r) => r.zone.body.letter],
  ['zone name', (r) => r.zone.body.name],
  ['zone area m2', (r) => areaOn(r.zone, r.round.body.date).m2],
  ['kind code', (r) => r.finding.body.kind],
  ['kind', (r) => kindOf(r.finding.body.kind)?.name ?? 'not known to this version'],
  ['origin', (r) => r.finding.body.origin],
  ['how', (r) => lookedHow(r.finding)],
  ['coverage %', coverage((c) => c.value)],
  ['coverage low %', coverage((c) => c.low)],
  ['coverage high %', coverage((c) => c.high)],
  ['coverage method', (r) => r.finding.body.coverage?.method],
  ['count', (r) => r.finding.body.count],
  ['severity', (r) => r.finding.body.severity],
  ['activity', (r) => r.finding.body.activity],
  ['versions not settled', (r) => (r.finding.heads.length > 1 ? r.finding.heads.length : 0)],
  ['note', (r) => r.finding.body.note],
  ['finding', (r) => r.finding.thing],
];

const rowsOf = (record: SculptureRecord): Row[] => {
  const zones = new Map(record.zones.map((z) => [z.thing, z]));
  return record.rounds.flatMap((round) =>
    record.findings
      .filter((f) => f.body.round === round.thing)
      .flatMap((finding) => {
        const zone = zones.get(finding.body.zone);
        return zone ? [{ record, round, zone, finding }] : [];
      })
      .sort((a, b) => a.zone.body.order - b.zone.body.order),
  );
};

/** Findings of all sculptures as a table: one row each, RFC 4180, UTF-8 with a mark so that spreadsheets read it as such. */
export const findingsCsv = (entries: Iterable<Entry>): Uint8Array<ArrayBuffer> => {
  const records = [...byWithin(assemble(entries).values()).values()].flatMap((own) => gather(own) ?? []);
  const byNumber = (r: SculptureRecord) => `${r.sculpture.body.number}\n${r.sculpture.thing}`;
  records.sort((a, b) => (byNumber(a) < byNumber(b) ? -1 : 1));
  const lines = [
    columns.map(([head]) => cell(head)).join(','),
    ...records.flatMap(rowsOf).map((row) => columns.map(([, of]) => cell(of(row))).join(',')),
  ];
  return new TextEncoder().encode(`\ufeff${lines.join('\r\n')}\r\n`);
};
