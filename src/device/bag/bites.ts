import { makeZip } from 'client-zip';
import { type BagInfo, bagPaths, declaration, type Listed, writeInfo, writeManifest } from '../../engine/bag';
import type { Entry } from '../../engine/record';
import { sha256 } from '../hash';
import type { Reader } from '../store';
import { type PhotosGone, payload } from './contents';
import type { BagPapers, WriteAsked } from './written';

/** What a bag says of itself. */
export type BagAsked = Pick<WriteAsked, 'name' | 'collection' | 'storeId' | 'day' | 'without' | 'sculptures'> & {
  readonly states?: ReadonlyMap<string, string>;
};

interface Zipped {
  readonly name: string;
  readonly input: Uint8Array<ArrayBuffer>;
  readonly lastModified: Date;
}

/** All files of the bag in the order they lie in the zip: the declaration, the payload, and the texts that tell of it. */
async function* zipped(
  reader: Pick<Reader, 'photo'>,
  { name, collection, storeId, day, without, sculptures, states }: BagAsked,
  entries: readonly Entry[],
  papers: BagPapers,
  gone: PhotosGone,
): AsyncGenerator<Zipped, void> {
  const base = name.replace(/\..*$/, '');
  // The day alone: the same record on the same day makes the same bag.
  const lastModified = new Date(`${day}T12:00:00`);
  const tags: Listed[] = [];
  const file = (path: string, input: Uint8Array<ArrayBuffer>): Zipped => ({
    name: `${base}/${path}`,
    input,
    lastModified,
  });
  const tag = async (path: string, text: string): Promise<Zipped> => {
    const bytes = new TextEncoder().encode(text);
    tags.push({ path, sha256: await sha256(bytes) });
    return file(path, bytes);
  };
  const listed: Listed[] = [];
  let bytes = 0;
  yield tag(bagPaths.declaration, declaration);
  for await (const part of payload(reader, { collection, entries, day, leftOut: without, states }, papers, gone)) {
    listed.push({ path: part.path, sha256: part.sha256 });
    bytes += part.bytes.byteLength;
    yield file(part.path, part.bytes);
  }
  const info: BagInfo = {
    collection,
    store: storeId,
    day,
    entries: entries.length,
    photos: gone.here.length,
    missing: gone.missing,
    leftOut: without,
    sculptures,
    payload: { bytes, files: listed.length },
  };
  yield tag(bagPaths.manifest, writeManifest(listed));
  yield tag(bagPaths.info, writeInfo(info));
  yield file(bagPaths.tagManifest, new TextEncoder().encode(writeManifest(tags)));
}

/** The zip as it comes, stored and not packed: photos are packed already. */
export async function* bites(
  reader: Pick<Reader, 'photo'>,
  asked: BagAsked,
  entries: readonly Entry[],
  papers: BagPapers,
  gone: PhotosGone,
): AsyncGenerator<Uint8Array<ArrayBuffer>, void> {
  const stream = makeZip(zipped(reader, asked, entries, papers, gone)).getReader();
  try {
    for (let next = await stream.read(); !next.done; next = await stream.read()) {
      yield next.value as Uint8Array<ArrayBuffer>;
    }
  } finally {
    await stream.cancel().catch(() => undefined);
  }
}
