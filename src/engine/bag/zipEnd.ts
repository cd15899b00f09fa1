import { type BagText, refused, says } from './readText';
import { bagReason } from './reasonCodes';

/** Where the directory of a zip lies and how many files it lists (APPNOTE.TXT 6.3.10, 4.3.14 to 4.3.16). */
export interface ZipEnd {
  readonly start: number;
  readonly bytes: number;
  readonly files: number;
}

/** Bytes of the end record without its comment, the longest comment there can be, and the two records of a large zip before it. */
const endBytes = 22;
const longestComment = 65_535;
const locatorBytes = 20;
const largeEndBytes = 56;

/** As many bytes at the end of a zip as may be needed to find its directory. */
export const zipTail = endBytes + longestComment + locatorBytes + largeEndBytes;

const signature = { end: 0x06054b50, locator: 0x07064b50, largeEnd: 0x06064b50 } as const;
/** What stands where a number does not fit and is told elsewhere. */
const elsewhere = { short: 0xffff, long: 0xffffffff } as const;

export const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** A number of eight bytes, or -1 where it is more than any file has. */
export const long = (view: DataView, at: number): number => {
  const value = view.getBigUint64(at, true);
  return value <= BigInt(Number.MAX_SAFE_INTEGER) ? Number(value) : -1;
};

const cut = refused(bagReason('bag: cut off', {}));
const lying = refused(bagReason('bag: zip untrue', { path: '' }));

/** Reads the last bytes of a zip of `size` bytes. */
export const readEnd = (tail: Uint8Array, size: number): BagText<ZipEnd> => {
  const view = viewOf(tail);
  let at = tail.length - endBytes;
  // The comment has to reach to the last byte, so that nothing was cut off or hung on.
  while (
    at >= 0 &&
    !(view.getUint32(at, true) === signature.end && at + endBytes + view.getUint16(at + 20, true) === tail.length)
  )
    at--;
  if (at < 0) return cut;
  const word = (offset: number) => view.getUint16(at + offset, true);
  const parts = [word(4), word(6)];
  if (parts.some((part) => part !== 0 && part !== elsewhere.short)) return refused(bagReason('bag: zip in parts', {}));
  const told: ZipEnd = { files: word(10), bytes: view.getUint32(at + 12, true), start: view.getUint32(at + 16, true) };
  const large = at >= locatorBytes && view.getUint32(at - locatorBytes, true) === signature.locator;
  const end = large ? largeEnd(view, at - locatorBytes, size - tail.length, told) : told;
  if (!end) return lying;
  if (!large && word(8) !== told.files) return lying;
  const directoryEnds = size - tail.length + (large ? at - locatorBytes - largeEndBytes : at);
  return end.start >= 0 && end.start + end.bytes === directoryEnds ? says(end) : lying;
};

const largeEnd = (view: DataView, locator: number, before: number, told: ZipEnd): ZipEnd | undefined => {
  const at = locator - largeEndBytes;
  if (at < 0 || view.getUint32(at, true) !== signature.largeEnd || long(view, at + 4) !== largeEndBytes - 12) return;
  if (long(view, locator + 8) !== before + at) return;
  const parts = [view.getUint32(locator + 4, true), view.getUint32(at + 16, true), view.getUint32(at + 20, true)];
  if (view.getUint32(locator + 16, true) > 1 || parts.some((part) => part !== 0)) return;
  const end: ZipEnd = { files: long(view, at + 32), bytes: long(view, at + 40), start: long(view, at + 48) };
  const agrees = (short: number, whole: number, most: number) => short === most || short === whole;
  const same =
    long(view, at + 24) === end.files &&
    agrees(told.files, end.files, elsewhere.short) &&
    agrees(told.bytes, end.bytes, elsewhere.long) &&
    agrees(told.start, end.start, elsewhere.long);
  return same ? end : undefined;
};
