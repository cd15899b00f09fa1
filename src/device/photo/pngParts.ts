/** One chunk of a PNG: where its content starts and ends; four bytes of checksum follow (PNG, third edition, 5.3). */
export interface PngPart {
  readonly name: string;
  readonly start: number;
  readonly end: number;
}

const firstPart = 8;

/** The chunks in order. Ends quietly where the file is cut: the chunk it is cut in is the last, as far as it goes. */
export const pngParts = (bytes: Uint8Array): PngPart[] => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts: PngPart[] = [];
  for (let at = firstPart; at + 8 <= bytes.length; ) {
    const length = view.getUint32(at);
    const name = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    parts.push({ name, start: at + 8, end: Math.min(at + 8 + length, bytes.length) });
    at += 12 + length;
  }
  return parts;
};

/** After its content was changed in place: the checksum that fits it. */
export const sealPart = (bytes: Uint8Array, { start, end }: PngPart): void => {
  if (end + 4 > bytes.length) return;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  view.setUint32(end, checksum(bytes.subarray(start - 4, end)));
};

/** CRC-32 of ISO 3309, as PNG has it (annex D). */
export const checksum = (bytes: Uint8Array): number => {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return ~crc >>> 0;
};

/** Samples a pixel for each colour type (PNG, third edition, 11.2.1). */
const samples: Readonly<Record<number, number>> = { 0: 1, 2: 3, 3: 1, 4: 2, 6: 4 };

/** Passes of the Adam7 interlace: first column and row, and steps (PNG, third edition, 8.1). */
const passes = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;

/** How many bytes its pixels unpack to, by what its header says; undefined where the header is not understood. */
const promised = (bytes: Uint8Array): number | undefined => {
  const head = pngParts(bytes)[0];
  if (head?.name !== 'IHDR' || head.end - head.start < 13) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset + head.start, 13);
  const [width, height] = [view.getUint32(0), view.getUint32(4)];
  const bits = (samples[view.getUint8(9)] ?? 0) * view.getUint8(8);
  if (bits === 0) return undefined;
  const lines = (across: number, down: number) => (across && down ? down * (1 + Math.ceil((across * bits) / 8)) : 0);
  if (view.getUint8(12) === 0) return lines(width, height);
  return passes.reduce(
    (sum, [x, y, stepX, stepY]) =>
      sum + lines(Math.max(0, Math.ceil((width - x) / stepX)), Math.max(0, Math.ceil((height - y) / stepY))),
    0,
  );
};

/** Deflate packs no tighter than this (RFC 1951: 258 bytes into two bits). A file that promises more lies. */
const tightest = 1032;

/**
 * Whether its pixels are as many as its header says. They are unpacked and counted, never held, and no further than one
 * piece past what was promised.
 */
export const pngHolds = async (bytes: Uint8Array<ArrayBuffer>): Promise<'whole' | 'cut short' | 'size untrue'> => {
  const parts = pngParts(bytes);
  const due = promised(bytes);
  const packed = parts.filter(({ name }) => name === 'IDAT').map(({ start, end }) => bytes.subarray(start, end));
  const held = packed.reduce((sum, piece) => sum + piece.length, 0);
  if (due === undefined || due > held * tightest) return 'size untrue';
  const ended = parts.some(({ name }) => name === 'IEND');
  const found = await unpackedLength(packed, due);
  if (found > due) return 'size untrue';
  if (found < due) return ended ? 'size untrue' : 'cut short';
  return 'whole';
};

const unpackedLength = async (packed: readonly Uint8Array<ArrayBuffer>[], enough: number): Promise<number> => {
  const pieces = new Blob([...packed]).stream().pipeThrough(new DecompressionStream('deflate'));
  const reader = pieces.getReader();
  let length = 0;
  try {
    for (let read = await reader.read(); !read.done && length <= enough; read = await reader.read())
      length += read.value.length;
    await reader.cancel();
  } catch {
    // Cut or damaged: what came so far is what there is.
  }
  return length;
};
