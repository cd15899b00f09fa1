import { bagLimits } from './bagLimits';
import { type BagText, refused, says } from './readText';
import { bagReason } from './reasonCodes';
import { long, viewOf } from './zipEnd';

/** One file as the directory of a zip tells of it (APPNOTE.TXT 6.3.10, 4.3.12). */
export interface ZipEntry {
  readonly name: string;
  /** As it is written, for holding against the header before the bytes. */
  readonly nameBytes: Uint8Array;
  readonly folder: boolean;
  readonly deflated: boolean;
  /** Sizes and check sum stand behind the bytes, not before them. */
  readonly toldBehind: boolean;
  readonly crc: number;
  readonly packed: number;
  readonly bytes: number;
  /** Where the header before its bytes begins. */
  readonly at: number;
}

export const headerBytes = 30;
const signature = { entry: 0x02014b50, header: 0x04034b50, behind: 0x08074b50 } as const;
const entryBytes = 46;
const flag = { encrypted: 0x2041, toldBehind: 0x8, patch: 0x20 } as const;
const method = { stored: 0, deflated: 8 } as const;
const more = 0xffffffff;
/** Extra field in which a large zip tells what does not fit in four bytes. */
const largeField = 1;
/** Mode of a UNIX file that is only the name of another. */
const modes = { mask: 0o170000, link: 0o120000 } as const;

const untrue = (path: string) => refused(bagReason('bag: zip untrue', { path }));

const fieldOf = (extra: Uint8Array, id: number): DataView | undefined => {
  const view = viewOf(extra);
  for (let at = 0; at + 4 <= extra.length; ) {
    const length = view.getUint16(at + 2, true);
    if (at + 4 + length > extra.length) return undefined;
    if (view.getUint16(at, true) === id) return viewOf(extra.subarray(at + 4, at + 4 + length));
    at += 4 + length;
  }
  return undefined;
};

/** The numbers that stand as `more`, taken in their order from the field of a large zip; undefined where it does not have them. */
const spelledOut = (numbers: readonly number[], extra: Uint8Array): number[] | undefined => {
  const field = fieldOf(extra, largeField);
  let at = 0;
  const whole = numbers.map((value) => {
    if (value !== more) return value;
    at += 8;
    return field && at <= field.byteLength ? long(field, at - 8) : -1;
  });
  return whole.every((value) => value >= 0) ? whole : undefined;
};

const nameIn = (bytes: Uint8Array): string | undefined => {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
};

/** Reads the whole directory: so many entries, one after the other, and nothing else. */
export const readDirectory = (directory: Uint8Array, files: number): BagText<readonly ZipEntry[]> => {
  if (files > bagLimits.files)
    return refused(bagReason('bag: too many files', { count: files, most: bagLimits.files }));
  const view = viewOf(directory);
  const entries: ZipEntry[] = [];
  let at = 0;
  while (at + entryBytes <= directory.length && view.getUint32(at, true) === signature.entry) {
    const word = (offset: number) => view.getUint16(at + offset, true);
    const [nameLength, extraLength, commentLength] = [word(28), word(30), word(32)];
    const next = at + entryBytes + nameLength + extraLength + commentLength;
    if (next > directory.length) return untrue('');
    const nameBytes = directory.subarray(at + entryBytes, at + entryBytes + nameLength);
    const name = nameIn(nameBytes);
    if (name === undefined) return refused(bagReason('bag: name', { path: '' }));
    if (word(8) & flag.encrypted) return refused(bagReason('bag: encrypted', { path: name }));
    const way = word(10);
    if ((way !== method.stored && way !== method.deflated) || word(8) & flag.patch)
      return refused(bagReason('bag: packed otherwise', { path: name }));
    const extra = directory.subarray(at + entryBytes + nameLength, next - commentLength);
    const told = [24, 20, 42].map((offset) => view.getUint32(at + offset, true));
    const [bytes = -1, packed = -1, start = -1] = spelledOut(told, extra) ?? [];
    const link = ((view.getUint32(at + 38, true) >>> 16) & modes.mask) === modes.link;
    const folder = name.endsWith('/');
    if (bytes < 0 || word(34) !== 0 || link || (folder && bytes > 0)) return untrue(name);
    if (way === method.stored && packed !== bytes) return untrue(name);
    const deflated = way === method.deflated;
    const toldBehind = (word(8) & flag.toldBehind) !== 0;
    entries.push({
      name,
      nameBytes,
      folder,
      deflated,
      toldBehind,
      crc: view.getUint32(at + 16, true),
      packed,
      bytes,
      at: start,
    });
    at = next;
  }
  return at === directory.length && entries.length === files ? says(entries) : untrue('');
};

const same = (a: Uint8Array, b: Uint8Array): boolean => a.length === b.length && a.every((byte, i) => byte === b[i]);

/** Holds the header before the bytes of a file against the directory: gives where the bytes begin, counted from the header. */
export const readHeader = (head: Uint8Array, entry: ZipEntry): BagText<number> => {
  const view = viewOf(head);
  if (head.length < headerBytes || view.getUint32(0, true) !== signature.header) return untrue(entry.name);
  const word = (offset: number) => view.getUint16(offset, true);
  const nameEnds = headerBytes + word(26);
  const length = nameEnds + word(28);
  const behind = (word(6) & flag.toldBehind) !== 0;
  const deflated = word(8) === method.deflated;
  if (length > head.length || !same(head.subarray(headerBytes, nameEnds), entry.nameBytes)) return untrue(entry.name);
  if (word(6) & flag.encrypted) return refused(bagReason('bag: encrypted', { path: entry.name }));
  if (behind !== entry.toldBehind || deflated !== entry.deflated || (!deflated && word(8) !== method.stored))
    return untrue(entry.name);
  const told = [22, 18].map((offset) => view.getUint32(offset, true));
  const crc = view.getUint32(14, true);
  if (behind && crc === 0 && told.every((value) => value === 0 || value === more)) return says(length);
  const [bytes, packed] = spelledOut(told, head.subarray(nameEnds, length)) ?? [];
  return bytes === entry.bytes && packed === entry.packed && crc === entry.crc ? says(length) : untrue(entry.name);
};

/** Holds what stands behind the bytes of a file against the directory. It has one of four forms: with or without a signature, short or long. */
export const behindAgrees = (behind: Uint8Array, entry: ZipEntry): boolean => {
  if (!entry.toldBehind) return behind.length === 0;
  const view = viewOf(behind);
  const signed = behind.length === 16 || behind.length === 24;
  if (!signed && behind.length !== 12 && behind.length !== 20) return false;
  if (signed && view.getUint32(0, true) !== signature.behind) return false;
  const at = signed ? 4 : 0;
  const wide = behind.length > 16;
  const number = (offset: number) => (wide ? long(view, offset) : view.getUint32(offset, true));
  return (
    view.getUint32(at, true) === entry.crc &&
    number(at + 4) === entry.packed &&
    number(at + (wide ? 12 : 8)) === entry.bytes
  );
};
