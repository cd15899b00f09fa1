import { makeZip } from 'client-zip';
import { type BagInfo, bagPaths, declaration, type Listed, writeInfo, writeManifest } from '../../engine/bag';
import { type PartialCarry, partialCarry } from '../../engine/exchange';
import { sha256 } from '../hash';
import { deviceReason } from '../reasonCodes';
import { openReader, type Reader } from '../store';
import { StoreProblem } from '../storeProblem';
import type { BagAnswer } from './asked';
import { type PhotosGone, payload, photosOf } from './contents';
import { goOn } from './leftOff';
import { ownFileTarget } from './ownFiles';
import { readBack } from './readBack';
import { memoryTarget, pickedTarget, type Target } from './target';
import type { BagPapers, BagWritten, WriteAsked } from './written';

/** What the survey and the papers come to beside the photos, for how far it is. Bytes an entry, measured on the demo. */
const bytesOfAnEntry = 2000;

interface Zipped {
  readonly name: string;
  readonly input: Uint8Array<ArrayBuffer>;
  readonly lastModified: Date;
}

/** Answers 'write': a bag is written, read back, and only then told of. Whatever ends it, nothing half done stays behind. */
export const writing =
  (papers: BagPapers): BagAnswer<'write'> =>
  async (asked, { heard, signal }) => {
    const reader = openReader(asked.store);
    try {
      const carried = partialCarry(await reader.allEntries(), { ...asked });
      if (carried.entries.length === 0) throw new StoreProblem(deviceReason('bag of nothing', {}));
      const gone: PhotosGone = { here: [], missing: [], damaged: [] };
      const all = expected(carried);
      let done = 0;
      const files = zipped(reader, asked, carried, papers, gone);
      const target = await targetOf(asked);
      try {
        for await (const bite of bites(files)) {
          goOn(signal);
          await target.write(bite);
          done += bite.byteLength;
          heard({ stage: 'writing', done: Math.min(done, all), all });
        }
        const file = await target.done();
        await readBack(file, gone.here.length, { heard, signal });
        return toldOf(file, carried, gone);
      } catch (error) {
        await target.drop();
        throw isFull(error)
          ? new StoreProblem(deviceReason('no room for a bag', { megabytes: Math.ceil(all / 1e6) }), error)
          : error;
      }
    } finally {
      reader.close();
    }
  };

const expected = ({ entries }: PartialCarry): number =>
  [...photosOf(entries).values()].reduce((sum, { bytes }) => sum + bytes, entries.length * bytesOfAnEntry);

const isFull = (error: unknown): boolean => error instanceof DOMException && error.name === 'QuotaExceededError';

const targetOf = async ({ id, name, into }: WriteAsked): Promise<Target> => {
  if (into) return pickedTarget(into);
  return (await ownFileTarget(id, name)) ?? memoryTarget(name, bagMime);
};

export const bagMime = 'application/zip';

/** All files of the bag in the order they lie in the zip: the declaration, the payload, and the texts that tell of it. */
async function* zipped(
  reader: Reader,
  { name, collection, storeId, day, without, sculptures }: WriteAsked,
  { entries }: PartialCarry,
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
  for await (const part of payload(reader, { collection, entries, day, leftOut: without }, papers, gone)) {
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
async function* bites(files: AsyncIterable<Zipped>): AsyncGenerator<Uint8Array<ArrayBuffer>, void> {
  const stream = makeZip(files).getReader();
  try {
    for (let next = await stream.read(); !next.done; next = await stream.read()) {
      yield next.value as Uint8Array<ArrayBuffer>;
    }
  } finally {
    await stream.cancel().catch(() => undefined);
  }
}

const toldOf = (file: File, { entries, holds, keptAtHome }: PartialCarry, gone: PhotosGone): BagWritten => ({
  file,
  entries: entries.length,
  photos: gone.here.length,
  photoBytes: gone.here.reduce((sum, { bytes }) => sum + bytes, 0),
  missing: gone.missing.length,
  damaged: gone.damaged,
  holds,
  keptAtHome: keptAtHome.length,
});
