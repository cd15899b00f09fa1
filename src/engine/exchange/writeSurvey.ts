import canonicalize from 'canonicalize';
import { type Entry, sameEntry, withoutErased } from '../record';
import { crc32 } from './crc32';
import { format, version } from './limits';

const byId = (a: Entry, b: Entry): number => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/** Everything of a survey file but its check sum, as RFC 8785 orders and writes it. */
const unchecked = (named: string, collection: string, entries: readonly Entry[]): string => {
  const sorted = [...withoutErased(entries)].sort(byId);
  const once = sorted.filter((entry, i) => {
    const before = sorted[i - 1];
    if (before?.id !== entry.id) return true;
    if (!sameEntry(before, entry)) throw new RangeError(`Two contents under the id ${entry.id}.`);
    return false;
  });
  const written = once.map((entry) => canonicalize({ ...entry, replaces: [...entry.replaces].sort() }));
  return `"collection":${canonicalize(collection)},"entries":[${written.join(',')}],"format":"${named}","version":"${version}"}`;
};

/**
 * A survey as the bytes of a *.survey.json file: RFC 8785, entries sorted by id, `replaces` sorted, and nothing of when or where it
 * was written, so that equal surveys are equal bytes. What an erasure among them names is not written. `check` comes first in that order; it is the CRC-32 of all that follows its
 * comma. Throws a RangeError on two contents under one id, and an Error on text or numbers JSON cannot hold.
 */
export const writeSurvey = (collection: string, entries: readonly Entry[]): Uint8Array<ArrayBuffer> =>
  writeEntries(format, collection, entries);

/** The same under another name of format. */
export const writeEntries = (named: string, collection: string, entries: readonly Entry[]): Uint8Array<ArrayBuffer> => {
  const encoder = new TextEncoder();
  const rest = encoder.encode(unchecked(named, collection, entries));
  const start = encoder.encode(`{"check":"crc32:${crc32(rest)}",`);
  const bytes = new Uint8Array(start.length + rest.length);
  bytes.set(start);
  bytes.set(rest, start.length);
  return bytes;
};
