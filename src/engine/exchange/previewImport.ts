import {
  assemble,
  byWithin,
  type Current,
  type Entry,
  erasedBy,
  erasureOf,
  gather,
  idPart,
  isErased,
  nameOf,
  type Reason,
  roundsThatMayBeOne,
} from '../record';
import { referencesOf } from './references';
import { unite } from './unite';

/** What taking a survey in would do to the things of one sculpture, or of the collection itself. Counts are of things. */
export interface PreviewRow {
  /** Thing name of the sculpture, or of the collection. */
  readonly within: string;
  /** Number and title as they would stand afterwards; empty for the collection itself, or where the sculpture is not in either. */
  readonly number: string;
  readonly title: string;
  /** The sculpture is not here yet. */
  readonly newHere: boolean;
  /** Things that are not here yet. */
  readonly new: number;
  /** Things that would show a later version than now, taking away and bringing back included. */
  readonly replaced: number;
  /** Things that would have two versions, to be settled by a person. */
  readonly twoVersions: number;
  /** Things on which the file says nothing that would change what is here. */
  readonly already: number;
  /** Photos spoken of whose bytes come with the file and are not here yet. */
  readonly photosComing: number;
  /** Photos spoken of whose bytes are neither here nor come with the file. */
  readonly photosMissing: number;
  /** Pairs of rounds, one of them new here, that may be one round begun apart. */
  readonly roundsThatMayBeOne: number;
  /** Entries here that an erasure in the file takes out for good. */
  readonly erased: number;
}

export interface Side {
  /** Thing name of the collection. */
  readonly collection: string;
  readonly entries: readonly Entry[];
}

export interface Preview {
  readonly ok: true;
  /** Sculptures by number, the collection itself last. */
  readonly rows: readonly PreviewRow[];
  /** Entries that are not here yet: what would be stored. */
  readonly entries: readonly Entry[];
  /** Set where the file belongs to another collection; then a person must say so before anything is stored. Names, or ids. */
  readonly otherCollection?: { readonly here: string; readonly theirs: string };
  /** The file holds an invented collection. */
  readonly invented: boolean;
  /** SHA-256 of photos that come with the file, are spoken of, not here yet and not erased. */
  readonly photosComing: readonly string[];
  /** Devices that wrote two entries under one count: a copied tablet. */
  readonly copiedDevices: readonly string[];
  /** Things spoken of that are neither here nor in the file. */
  readonly keptAtHome: number;
  /** Entries here that erasures in the file take out for good, and photos whose bytes here go with them. */
  readonly erased: { readonly entries: number; readonly photos: number };
  /** Entries of the file that were erased here before: not taken. */
  readonly refused: number;
}

const collectionBody = (side: Side): Entry['body'] => assemble(side.entries).get(side.collection)?.lead.body ?? {};
const nameOfCollection = (side: Side): string => String(collectionBody(side).name ?? '') || idPart(side.collection);

/** Devices with one count on two entries: both are true records, so both stay; the device has to be told. */
const copied = (entries: readonly Entry[]): string[] => {
  const seen = new Map<string, string>();
  const devices = new Set<string>();
  for (const { id, device, n } of entries) {
    const count = `${device}\n${n}`;
    const other = seen.get(count);
    if (other !== undefined && other !== id) devices.add(device);
    seen.set(count, id);
  }
  return [...devices].sort();
};

const outcome = (before: Current | undefined, after: Current): 'new' | 'replaced' | 'twoVersions' | 'already' => {
  if (!before) return after.heads.length > 1 && !after.gone ? 'twoVersions' : 'new';
  const same = before.heads.length === after.heads.length && before.heads.every((id) => after.heads.includes(id));
  if (same) return 'already';
  return after.heads.length > 1 && !after.gone ? 'twoVersions' : 'replaced';
};

interface Afterwards {
  readonly erasedWithin: ReadonlyMap<string, number>;
  readonly before: ReadonlyMap<string, Current>;
  readonly after: ReadonlyMap<string, Current>;
  readonly photosHere: ReadonlySet<string>;
  readonly photosWithIt: ReadonlySet<string>;
}

const row = (within: string, theirs: readonly Current[], all: readonly Current[], world: Afterwards): PreviewRow => {
  const counts = { new: 0, replaced: 0, twoVersions: 0, already: 0 };
  const photos = { photosComing: 0, photosMissing: 0 };
  for (const { thing } of theirs) {
    const after = world.after.get(thing);
    if (!after) continue;
    counts[outcome(world.before.get(thing), after)]++;
    const sha256 = String(after.lead.body.sha256);
    if (after.kind !== 'photo' || after.gone || world.photosHere.has(sha256)) continue;
    photos[world.photosWithIt.has(sha256) ? 'photosComing' : 'photosMissing']++;
  }
  const record = within.startsWith('sculpture/') ? gather(all) : undefined;
  const pairs = record ? roundsThatMayBeOne(record) : [];
  const isNew = (round: string) => !world.before.has(round);
  return {
    within,
    number: String(world.after.get(within)?.lead.body.number ?? ''),
    title: String(world.after.get(within)?.lead.body.title ?? ''),
    newHere: !world.before.has(within),
    ...counts,
    ...photos,
    roundsThatMayBeOne: pairs.filter(({ earlier, later }) => isNew(earlier.thing) || isNew(later.thing)).length,
    erased: world.erasedWithin.get(within) ?? 0,
  };
};

const sculpturesByNumber = (a: PreviewRow, b: PreviewRow): number => {
  const rank = (r: PreviewRow) => `${r.within.startsWith('sculpture/') ? 0 : 1}\n${r.number}\n${r.within}`;
  return rank(a) < rank(b) ? -1 : 1;
};

/**
 * What taking in a survey would change, sculpture by sculpture, before anything is stored. `photosHere` are SHA-256 of photos whose
 * bytes lie on this device, `photosWithIt` those whose bytes come with the survey. Refused where one id stands for two contents.
 */
export const previewImport = (
  here: Side,
  theirs: Side,
  photosHere: Iterable<string> = [],
  photosWithIt: Iterable<string> = [],
): Preview | { readonly ok: false; readonly problems: readonly Reason[] } => {
  const united = unite(here.entries, theirs.entries);
  if (!united.ok) return united;
  const known = new Set(here.entries.map((e) => e.id));
  const erased = erasedBy(united.entries);
  const going = here.entries.filter((e) => isErased(erased, e));
  const erasedWithin = new Map<string, number>();
  for (const { within } of going) erasedWithin.set(within, (erasedWithin.get(within) ?? 0) + 1);
  const photos = new Set(photosHere);
  const [before, after] = [assemble(here.entries), assemble(united.entries)];
  const withIt = new Set(photosWithIt);
  const world = { before, after, photosHere: photos, photosWithIt: withIt, erasedWithin };
  const coming = theirs.entries.filter((e) => !isErased(erased, e));
  const ofFile = byWithin(assemble(coming).values());
  const all = byWithin(after.values());
  const mentioned = new Set(coming.flatMap((e) => referencesOf(e).map((r) => r.name)));
  const withins = new Set([...ofFile.keys(), ...erasedWithin.keys()]);
  return {
    ok: true,
    rows: [...withins]
      .map((within) => row(within, ofFile.get(within) ?? [], all.get(within) ?? [], world))
      .sort(sculpturesByNumber),
    entries: coming.filter((e) => !known.has(e.id)),
    ...(here.collection === theirs.collection
      ? {}
      : { otherCollection: { here: nameOfCollection(here), theirs: nameOfCollection(theirs) } }),
    invented: collectionBody(theirs).invented === true,
    photosComing: [...withIt].filter((hash) => {
      const photo = after.get(nameOf.photo(hash));
      return photo && !photo.gone && !photos.has(hash) && !erased.hashes.has(hash);
    }),
    copiedDevices: copied(united.entries),
    keptAtHome: [...mentioned].filter((name) => !after.has(name) && !erasureOf(erased, name)).length,
    erased: { entries: going.length, photos: [...photos].filter((hash) => erased.hashes.has(hash)).length },
    refused: theirs.entries.length - coming.length,
  };
};
