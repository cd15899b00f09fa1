/** Bytes one value of each TIFF type takes up (TIFF 6.0, section 2). */
const sizes: readonly number[] = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8];

export interface TiffField {
  readonly tag: number;
  /** Where its twelve bytes stand, and where its value does, both from the start of the block. */
  readonly at: number;
  readonly valueAt: number;
  readonly length: number;
}

export interface TiffDirectory {
  readonly at: number;
  readonly fields: readonly TiffField[];
}

/** One block of EXIF: a TIFF inside the picture file (Exif 2.32, 4.5). */
export interface Tiff {
  readonly first: readonly TiffField[];
  /** The directory a field of the first one points to. */
  directory(tag: number): TiffDirectory | undefined;
  /** A whole number of one or two bytes or four; undefined where the field holds none. */
  whole(field: TiffField | undefined): number | undefined;
  ratio(field: TiffField | undefined): number | undefined;
  text(field: TiffField | undefined): string;
}

const littleEnd = 0x4949;
const bigEnd = 0x4d4d;

/** Undefined where no TIFF starts there. Whatever is cut off or points outside is left out. */
export const tiffAt = (bytes: Uint8Array, start: number, end: number): Tiff | undefined => {
  const view = new DataView(bytes.buffer, bytes.byteOffset + start, Math.max(0, end - start));
  const inside = (at: number, length: number) => at >= 0 && length >= 0 && at + length <= view.byteLength;
  const order = inside(0, 8) ? view.getUint16(0) : 0;
  if (order !== littleEnd && order !== bigEnd) return undefined;
  const little = order === littleEnd;
  const fields = (directory: number): TiffField[] => {
    if (!inside(directory, 2)) return [];
    const count = view.getUint16(directory, little);
    return Array.from({ length: count }, (_, i) => directory + 2 + i * 12)
      .filter((at) => inside(at, 12))
      .map((at) => {
        const length = (sizes[view.getUint16(at + 2, little)] ?? 0) * view.getUint32(at + 4, little);
        const valueAt = length <= 4 ? at + 8 : view.getUint32(at + 8, little);
        return { tag: view.getUint16(at, little), at, valueAt, length };
      })
      .filter(({ valueAt, length }) => inside(valueAt, length));
  };
  const first = fields(view.getUint32(4, little));
  const whole = (field: TiffField | undefined) => {
    if (field?.length === 2) return view.getUint16(field.valueAt, little);
    return field?.length === 4 ? view.getUint32(field.valueAt, little) : undefined;
  };
  return {
    first,
    directory: (tag) => {
      const at = whole(first.find((field) => field.tag === tag));
      return at === undefined ? undefined : { at, fields: fields(at) };
    },
    whole,
    ratio: (field) =>
      field && field.length >= 8
        ? view.getUint32(field.valueAt, little) / view.getUint32(field.valueAt + 4, little)
        : undefined,
    text: (field) =>
      field
        ? String.fromCharCode(
            ...bytes.subarray(start + field.valueAt, start + field.valueAt + Math.min(field.length, 200)),
          ).replace(/\0.*$/s, '')
        : '',
  };
};
