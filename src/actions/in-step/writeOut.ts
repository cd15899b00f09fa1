import type { Folder } from '../../device/folder';
import type { Desk } from '../desk';
import { type Segment, setSegment } from './joined';
import { segmentOf } from './segmentOf';
import type { Stepping } from './step';

/** Entries in one file: as many as are written, read and checked in well under 50 ms. */
export const entriesInFile = 100;

export interface WrittenOut {
  readonly gave: number;
  readonly segments: ReadonlyMap<string, Segment>;
  /** Another device writes under this one's name. */
  readonly taken: boolean;
}

/** Writes what the folder lacks into files of this device's own, the next numbers on. Left off in the middle, what was written stands. */
export const writeOut = async (
  desk: Desk,
  folder: Folder,
  lacking: readonly string[],
  writer: string,
  after: number,
  { heard, signal }: Stepping,
): Promise<WrittenOut> => {
  const segments = new Map<string, Segment>();
  if (lacking.length === 0) return { gave: 0, segments, taken: false };
  const { writeSegment } = await import('../../engine/exchange');
  await desk.store.shareArrived();
  let gave = 0;
  for (let at = 0, n = after + 1; at < lacking.length; at += entriesInFile, n++) {
    heard?.('writing', at, lacking.length);
    const entries = await desk.store.entriesWith(lacking.slice(at, at + entriesInFile));
    if (entries.length === 0) continue;
    const bytes = writeSegment(desk.collection, entries);
    const path = `${writer}/${n}.json`;
    if ((await folder.put(path, bytes, signal)) === 'there already') return { gave, segments, taken: true };
    const segment = await segmentOf(bytes, entries);
    await setSegment(desk, path, segment);
    segments.set(path, segment);
    gave += entries.length;
  }
  return { gave, segments, taken: false };
};
