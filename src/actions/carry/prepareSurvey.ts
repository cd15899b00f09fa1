import { findingsCsv, partialCarry, writeSurvey } from '../../engine/exchange';
import type { Entry, Reason } from '../../engine/record';
import type { Desk, Outcome } from '../desk';
import { attempt, refuse } from '../outcome';
import { refusal } from '../reasonCodes';

export type Without = 'names' | 'places' | 'access' | 'insert values';

export interface PrepareOptions {
  /** Thing names; all when left out. */
  readonly sculptures?: readonly string[];
  readonly without?: readonly Without[];
}

/** A file made and ready to leave, and what a person should know before it does. */
export interface Prepared {
  readonly name: string;
  readonly mime: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly entries: number;
  /** What it still holds: kind of thing and how many, most first. */
  readonly holds: readonly { readonly kind: string; readonly count: number }[];
  /** Photos it speaks of whose bytes stay on this device. */
  readonly photosStay: number;
  /** References to things left out, which will read "kept at home". */
  readonly keptAtHome: number;
  readonly notes: readonly Reason[];
}

const taken = async (desk: Desk, options: PrepareOptions) => {
  const all = await desk.store.allEntries();
  const carried = partialCarry(all, options);
  if (carried.entries.length === 0) refuse(refusal('nothing to carry', {}));
  return carried;
};

/** The survey as one canonical file: equal surveys are equal bytes. Photos do not travel in it. */
export const prepareSurvey = (desk: Desk, options: PrepareOptions = {}): Promise<Outcome<{ readonly prepared: Prepared }>> =>
  attempt(async () => {
    const carried = await taken(desk, options);
    const bytes = writeSurvey(desk.collection, carried.entries);
    return { prepared: prepared(desk, carried, bytes, 'survey.json', 'application/json') };
  });

/** The findings as a table for a spreadsheet (RFC 4180). It cannot be carried back in. */
export const findingsTable = (desk: Desk, options: PrepareOptions = {}): Promise<Outcome<{ readonly prepared: Prepared }>> =>
  attempt(async () => {
    const carried = await taken(desk, options);
    const csv = findingsCsv(carried.entries);
    const bytes = typeof csv === 'string' ? new TextEncoder().encode(csv) : csv;
    return { prepared: prepared(desk, carried, bytes, 'csv', 'text/csv') };
  });

const prepared = (
  desk: Desk,
  carried: { readonly entries: readonly Entry[] },
  bytes: Uint8Array<ArrayBuffer>,
  ending: string,
  mime: string,
): Prepared => {
  const counts = new Map<string, number>();
  const living = new Set<string>();
  for (const entry of carried.entries) if (!living.has(entry.thing)) {
    living.add(entry.thing);
    counts.set(entry.kind, (counts.get(entry.kind) ?? 0) + 1);
  }
  return {
    name: `patina-round-${desk.invented ? 'invented-' : ''}${desk.today()}.${ending}`,
    mime,
    bytes,
    entries: carried.entries.length,
    holds: [...counts].map(([kind, count]) => ({ kind, count })).sort((a, b) => b.count - a.count),
    photosStay: counts.get('photo') ?? 0,
    keptAtHome: 0,
    notes: [],
  };
};
