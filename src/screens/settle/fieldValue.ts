import {
  beadings,
  coverageMethods,
  exposures,
  kindOf,
  origins,
  reaches,
  reasonsNotLooked,
  roundTypes,
  substrates,
  treatmentOf,
} from '../../engine/trade';
import { area, date, list, type NameOfThing, number, share, w } from '../../words';

const words = w.settle;
const dated = /^\d{4}-\d{2}(-\d{2})?$/;
const thingLike = /^[a-zA-Z]+\/.+/;

type Row = { readonly id: string; readonly name: string };
/** By words that stand for codes already, on the screen where the thing is entered. */
const worded = (said: Readonly<Record<string, string>>) => (id: string) => said[id];
const rowNamed = (rows: readonly Row[]) => (id: string) => rows.find((row) => row.id === id)?.name;

/** Fields whose text is a code of the trade. */
const coded: Readonly<Record<string, (id: string) => string | undefined>> = {
  kind: (id) => kindOf(id)?.name,
  type: (id) => treatmentOf(id)?.name ?? rowNamed(roundTypes)(id),
  origin: rowNamed(origins),
  exposure: rowNamed(exposures),
  reach: rowNamed(reaches),
  reason: rowNamed(reasonsNotLooked),
  substrate: rowNamed(substrates),
  beading: rowNamed(beadings),
  method: rowNamed(coverageMethods),
  wet: worded(w.paperCondition.wet),
  washed: worded(w.paperCondition.washed),
  state: worded(w.papers.states),
  count: worded(w.round.said.count),
  severity: worded(w.round.said.severity),
  activity: worded(w.round.said.activity),
  removable: worded(w.inserts.removableWords),
  result: worded(w.logbook.results),
};

/** Fields held as a share of 1. */
const shares: ReadonlySet<string> = new Set(['share']);

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const coverage = (value: Record<string, unknown>): string | undefined => {
  const { value: p, low, high, method } = value;
  if (typeof p !== 'number' || typeof low !== 'number' || typeof high !== 'number') return undefined;
  return words.coverageWritten(share(p), share(low), share(high), coded.method?.(String(method)) ?? String(method));
};

const money = (value: Record<string, unknown>): string | undefined =>
  typeof value.minor === 'number' && typeof value.currency === 'string'
    ? `${number(value.minor / 100, 2)} ${value.currency}`
    : undefined;

const areaWritten = (value: Record<string, unknown>): string | undefined =>
  typeof value.m2 === 'number' ? area(value.m2) : undefined;

/** A value of a body as a person reads it: words of the trade, names of things, dates. Nothing is left out. */
export const fieldValue = (field: string, value: unknown, nameOf: NameOfThing): string => {
  if (value === undefined || value === null || value === '') return words.nothingWritten;
  if (typeof value === 'boolean') return value ? words.yes : words.no;
  if (typeof value === 'number') return shares.has(field) ? share(value) : number(value, 4);
  if (typeof value === 'string') {
    if (dated.test(value)) return date(value);
    const named = coded[field]?.(value) ?? (thingLike.test(value) ? nameOf(value) : undefined);
    return named ?? value;
  }
  if (Array.isArray(value)) {
    if (value.length === 0) return words.nothingWritten;
    const parts = value.map((part) => fieldValue(field, part, nameOf));
    return value.some(isRecord) ? parts.join(' · ') : list(parts);
  }
  if (!isRecord(value)) return String(value);
  return (
    coverage(value) ??
    money(value) ??
    areaWritten(value) ??
    Object.entries(value)
      .map(([key, part]) => `${words.fields[key] ?? kindOf(key)?.name ?? key}: ${fieldValue(key, part, nameOf)}`)
      .join(', ')
  );
};
