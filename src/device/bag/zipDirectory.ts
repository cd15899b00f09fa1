import {
  type BagText,
  bagLimits,
  bagReason,
  behindAgrees,
  headerBytes,
  readDirectory,
  readEnd,
  readHeader,
  type ZipEntry,
  zipTail,
} from '../../engine/bag';
import type { Reason } from '../../engine/record';

/** One file of a zip, as the directory at its end has it and the header before its bytes agrees. */
export interface ZipFile {
  /** As it is written in the zip, with the folders around the bag. */
  readonly name: string;
  readonly folder: boolean;
  /** Where its bytes begin in the zip. */
  readonly start: number;
  /** Bytes in the zip. */
  readonly packed: number;
  /** Bytes unpacked. */
  readonly bytes: number;
  readonly deflated: boolean;
}

const no = (reason: Reason): { readonly ok: false; readonly reason: Reason } => ({ ok: false, reason });
const untrue = (path: string) => no(bagReason('bag: zip untrue', { path }));

/** Bytes an extra field before a file may take up: far more than any system writes. */
const longestExtra = 2048;
/** The longest form of what may stand behind the bytes of a file. */
const longestBehind = 24;
/** A directory of so many files, with long names, takes up no more. */
const largestDirectory = bagLimits.files * 1000;

const sliceOf = async (zip: Blob, from: number, to: number): Promise<Uint8Array<ArrayBuffer>> =>
  new Uint8Array(await zip.slice(from, to).arrayBuffer());

const tooMuch = (entries: readonly ZipEntry[]): Reason | undefined => {
  for (const { name: path, bytes, packed, deflated } of entries) {
    if (bytes > bagLimits.fileBytes) {
      const [megabytes, most] = [Math.ceil(bytes / 1e6), bagLimits.fileBytes / 1e6];
      return bagReason('bag: file too large', { path, megabytes, most });
    }
    if (deflated && bytes > bagLimits.smallBytes && bytes > packed * bagLimits.ratio)
      return bagReason('bag: swells', { path, times: Math.round(bytes / Math.max(1, packed)) });
  }
  const all = entries.reduce((sum, { bytes }) => sum + bytes, 0);
  if (all <= bagLimits.bytes) return undefined;
  return bagReason('bag: too large', { gigabytes: Math.ceil(all / 1e9), most: bagLimits.bytes / 1e9 });
};

/**
 * The files of a zip, by slices: its end, its directory, and the header before each file held against it. The files must fill the zip
 * from its first byte to the directory, one behind the other, so that none shares bytes with another and nothing lies between them.
 */
export const zipDirectory = async (
  zip: Blob,
  between: () => void = () => undefined,
): Promise<BagText<readonly ZipFile[]>> => {
  const tail = await sliceOf(zip, Math.max(0, zip.size - zipTail), zip.size);
  const end = readEnd(tail, zip.size);
  if (!end.ok) return end;
  const { start, bytes, files } = end.value;
  if (bytes > largestDirectory) return untrue('');
  const read = readDirectory(await sliceOf(zip, start, start + bytes), files);
  if (!read.ok) return read;
  const much = tooMuch(read.value);
  if (much) return no(much);
  const inOrder = [...read.value].sort((a, b) => a.at - b.at);
  if ((inOrder[0]?.at ?? 0) !== 0 || (inOrder.length === 0 && start !== 0)) return untrue('');
  const found: ZipFile[] = [];
  for (const [i, entry] of inOrder.entries()) {
    between();
    const next = inOrder[i + 1]?.at ?? start;
    const longest = headerBytes + entry.nameBytes.length + longestExtra;
    const head = await sliceOf(zip, entry.at, Math.min(next, entry.at + longest));
    const length = readHeader(head, entry);
    if (!length.ok) return length;
    const begins = entry.at + length.value;
    const ends = begins + entry.packed;
    if (ends > next || next - ends > longestBehind) return untrue(entry.name);
    const behind = entry.toldBehind ? await sliceOf(zip, ends, next) : new Uint8Array(next - ends);
    if (!behindAgrees(behind, entry)) return untrue(entry.name);
    const { name, folder, packed, bytes: unpacked, deflated } = entry;
    found.push({ name, folder, start: begins, packed, bytes: unpacked, deflated });
  }
  return { ok: true, value: found };
};
