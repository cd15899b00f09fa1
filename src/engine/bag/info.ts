import { type BagText, linesOf, refused, says } from './readText';
import { bagReason } from './reasonCodes';

/** What bag-info.txt says of a bag. */
export interface BagInfo {
  /** Thing name of the collection. */
  readonly collection: string;
  /** Names the store it was written from. */
  readonly store: string;
  /** Calendar day it was written, YYYY-MM-DD. */
  readonly day: string;
  readonly entries: number;
  /** Photos in it. */
  readonly photos: number;
  /** SHA-256 of photos it speaks of and does not hold. */
  readonly missing: readonly string[];
  /** Kinds of thing left out when it was made. */
  readonly leftOut: readonly string[];
  /** Thing names of the works it was limited to; undefined: the whole collection. */
  readonly sculptures?: readonly string[] | undefined;
  /** Bytes and number of everything under data/. */
  readonly payload: { readonly bytes: number; readonly files: number };
}

/** Labels: those RFC 8493 (2.2.2) knows, and our own after them. */
const label = {
  day: 'Bagging-Date',
  software: 'Bag-Software-Agent',
  collection: 'External-Identifier',
  store: 'Internal-Sender-Identifier',
  payload: 'Payload-Oxum',
  entries: 'Survey-Entries',
  photos: 'Survey-Photos',
  missing: 'Survey-Photo-Not-Here',
  leftOut: 'Survey-Left-Out',
  sculpture: 'Survey-Sculpture',
} as const;

export const writeInfo = (info: BagInfo): string =>
  [
    [label.day, info.day],
    [label.software, 'Patina Round'],
    [label.collection, info.collection],
    [label.store, info.store],
    [label.payload, `${info.payload.bytes}.${info.payload.files}`],
    [label.entries, info.entries],
    [label.photos, info.photos],
    ...info.leftOut.map((what) => [label.leftOut, what]),
    ...(info.sculptures ?? []).map((work) => [label.sculpture, work]),
    ...[...info.missing].sort().map((sha256) => [label.missing, sha256]),
  ]
    .map(([name, value]) => `${name}: ${value}\n`)
    .join('');

const wholeNumber = (text: string | undefined): number | undefined =>
  text !== undefined && /^\d{1,15}$/.test(text) ? Number(text) : undefined;

/** Reads bag-info.txt. What it does not say is left out; labels of others are passed over; lines may be folded (2.2.2). */
export const readInfo = (bytes: Uint8Array): BagText<Partial<BagInfo>> => {
  const lines = linesOf('bag-info.txt', bytes);
  if (!lines.ok) return lines;
  const said: [name: string, value: string][] = [];
  for (const [i, line] of lines.value.entries()) {
    const folded = /^[ \t]+(.*)$/.exec(line)?.[1];
    const before = said.at(-1);
    const [, name, value] = /^([^:\s][^:]*?)[ \t]*:[ \t]*(.*)$/.exec(line) ?? [];
    if (folded !== undefined && before) before[1] = `${before[1]} ${folded}`;
    else if (name !== undefined && value !== undefined) said.push([name, value.trimEnd()]);
    else return refused(bagReason('bag: info line', { line: i + 1 }));
  }
  const all = (name: string): string[] =>
    said.filter(([given]) => given.toLowerCase() === name.toLowerCase()).map(([, value]) => value);
  const one = (name: string): string | undefined => all(name)[0];
  const [, sum, files] = /^(\d{1,15})\.(\d{1,9})$/.exec(one(label.payload) ?? '') ?? [];
  const works = all(label.sculpture);
  const known = {
    collection: one(label.collection),
    store: one(label.store),
    day: /^\d{4}-\d{2}-\d{2}$/.test(one(label.day) ?? '') ? one(label.day) : undefined,
    entries: wholeNumber(one(label.entries)),
    photos: wholeNumber(one(label.photos)),
    sculptures: works.length > 0 ? works : undefined,
    payload: sum === undefined ? undefined : { bytes: Number(sum), files: Number(files) },
  };
  return says({
    ...(Object.fromEntries(Object.entries(known).filter(([, value]) => value !== undefined)) as Partial<BagInfo>),
    missing: all(label.missing),
    leftOut: all(label.leftOut),
  });
};
