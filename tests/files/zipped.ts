import { deflateRawSync } from 'node:zlib';

/** One file of a zip as it is to be written, and what is to be untrue about it. */
export interface Zipped {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly deflated?: boolean;
  /** Sizes and check sum behind the bytes, with or without the signature. */
  readonly behind?: 'signed' | 'plain';
  readonly flags?: number;
  /** Of the directory only. */
  readonly saysBytes?: number;
  readonly saysPacked?: number;
  readonly saysCrc?: number;
  readonly saysName?: string;
  readonly method?: number;
  /** In the header before the bytes only. */
  readonly headerBytes?: number;
  readonly headerName?: string;
  readonly attributes?: number;
  /** Where the directory says its header begins. */
  readonly saysAt?: number;
  readonly extra?: Uint8Array;
  /** Written with the field of large zips. */
  readonly large?: boolean;
}

const table = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});
const crcOf = (bytes: Uint8Array): number => {
  let c = 0xffffffff;
  for (const byte of bytes) c = (table[(c ^ byte) & 0xff] as number) ^ (c >>> 8);
  return (c ^ 0xffffffff) >>> 0;
};

type Field = readonly [width: 2 | 4 | 8, value: number];
export const fields = (...all: readonly Field[]): Uint8Array<ArrayBuffer> => {
  const bytes = new Uint8Array(all.reduce((sum, [width]) => sum + width, 0));
  const view = new DataView(bytes.buffer);
  let at = 0;
  for (const [width, value] of all) {
    if (width === 2) view.setUint16(at, value, true);
    else if (width === 4) view.setUint32(at, value >>> 0, true);
    else view.setBigUint64(at, BigInt(value), true);
    at += width;
  }
  return bytes;
};

export const joined = (parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> => {
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
};

export const utf8 = (text: string): Uint8Array<ArrayBuffer> =>
  new TextEncoder().encode(text) as Uint8Array<ArrayBuffer>;

export interface ZipSays {
  readonly files?: number;
  readonly before?: Uint8Array;
  readonly comment?: Uint8Array;
  readonly after?: Uint8Array;
  readonly large?: boolean;
  readonly disk?: number;
}

/** A zip of these files, byte by byte, truthful unless told otherwise. */
export const zipOf = (files: readonly Zipped[], says: ZipSays = {}): Uint8Array<ArrayBuffer> => {
  const parts: Uint8Array[] = [says.before ?? new Uint8Array()];
  const directory: Uint8Array[] = [];
  let at = parts[0]?.length ?? 0;
  for (const file of files) {
    const packed = file.deflated ? new Uint8Array(deflateRawSync(file.bytes)) : file.bytes;
    const crc = crcOf(file.bytes);
    const flags = (file.flags ?? 0x800) | (file.behind ? 8 : 0);
    const method = file.method ?? (file.deflated ? 8 : 0);
    const headerName = utf8(file.headerName ?? file.name);
    const told = file.headerBytes ?? file.bytes.length;
    const extra = file.extra ?? new Uint8Array();
    const start: Field[] = [
      [4, 0x04034b50],
      [2, 20],
      [2, flags],
      [2, method],
      [2, 0],
      [2, 0x21],
    ];
    const sums: Field[] = file.behind
      ? [
          [4, 0],
          [4, 0],
          [4, 0],
        ]
      : [
          [4, crc],
          [4, packed.length],
          [4, told],
        ];
    const local = [fields(...start, ...sums, [2, headerName.length], [2, extra.length]), headerName, extra, packed];
    const behind: Field[] = [
      [4, crc],
      [4, packed.length],
      [4, file.bytes.length],
    ];
    if (file.behind) local.push(fields(...(file.behind === 'signed' ? [[4, 0x08074b50] as Field] : []), ...behind));
    const name = utf8(file.saysName ?? file.name);
    const [bytes, small] = [file.saysBytes ?? file.bytes.length, file.saysPacked ?? packed.length];
    const from = file.saysAt ?? at;
    const more = file.large ? fields([2, 1], [2, 24], [8, bytes], [8, small], [8, from]) : new Uint8Array();
    const own = (value: number) => (file.large ? 0xffffffff : value);
    directory.push(
      fields(
        [4, 0x02014b50],
        [2, 0x314],
        [2, 20],
        [2, flags],
        [2, method],
        [2, 0],
        [2, 0x21],
        [4, file.saysCrc ?? crc],
      ),
      fields([4, own(small)], [4, own(bytes)], [2, name.length], [2, more.length], [2, 0], [2, 0], [2, 0]),
      fields([4, file.attributes ?? 0], [4, own(from)]),
      name,
      more,
    );
    for (const part of local) {
      parts.push(part);
      at += part.length;
    }
  }
  const listed = joined(directory);
  const count = says.files ?? files.length;
  const comment = says.comment ?? new Uint8Array();
  if (says.large) {
    const end = at + listed.length;
    parts.push(listed);
    parts.push(
      fields(
        [4, 0x06064b50],
        [8, 44],
        [2, 45],
        [2, 45],
        [4, 0],
        [4, 0],
        [8, count],
        [8, count],
        [8, listed.length],
        [8, at],
      ),
    );
    parts.push(fields([4, 0x07064b50], [4, 0], [8, end], [4, 1]));
    parts.push(
      fields(
        [4, 0x06054b50],
        [2, 0],
        [2, 0],
        [2, 0xffff],
        [2, 0xffff],
        [4, 0xffffffff],
        [4, 0xffffffff],
        [2, comment.length],
      ),
    );
  } else {
    const disk = says.disk ?? 0;
    parts.push(
      listed,
      fields(
        [4, 0x06054b50],
        [2, disk],
        [2, disk],
        [2, count],
        [2, count],
        [4, listed.length],
        [4, at],
        [2, comment.length],
      ),
    );
  }
  parts.push(comment, says.after ?? new Uint8Array());
  return joined(parts);
};
