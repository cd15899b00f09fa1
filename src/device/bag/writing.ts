import { type PartialCarry, partialCarry } from '../../engine/exchange';
import { deviceReason } from '../reasonCodes';
import { statesOfRecord } from '../stateOfThings';
import { openReader } from '../store';
import { StoreProblem } from '../storeProblem';
import type { BagAnswer } from './asked';
import { bites } from './bites';
import { type PhotosGone, photosOf } from './contents';
import { goOn } from './leftOff';
import { ownFileTarget } from './ownFiles';
import { readBack } from './readBack';
import { memoryTarget, pickedTarget, type Target } from './target';
import type { BagPapers, BagWritten, WriteAsked } from './written';

/** What the survey and the papers come to beside the photos, for how far it is. Bytes an entry, measured on the demo. */
const bytesOfAnEntry = 2000;

/** Answers 'write': a bag is written, read back, and only then told of. Whatever ends it, nothing half done stays behind. */
export const writing =
  (papers: BagPapers): BagAnswer<'write'> =>
  async (asked, { heard, signal }) => {
    const reader = openReader(asked.store);
    try {
      const entries = await reader.allEntries();
      const carried = partialCarry(entries, { ...asked });
      if (carried.entries.length === 0) throw new StoreProblem(deviceReason('bag of nothing', {}));
      const states = statesOfRecord(entries);
      const gone: PhotosGone = { here: [], missing: [], damaged: [] };
      const all = expected(carried);
      let done = 0;
      const target = await targetOf(asked);
      try {
        for await (const bite of bites(reader, { ...asked, states }, carried.entries, papers, gone)) {
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
