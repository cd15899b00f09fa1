/** A JPEG as a camera would begin it, put together by hand: enough of one for everything that reads no pixels. */
type Field = readonly [tag: number, type: number, count: number, value: readonly number[]];

const bytesOf = (text: string): number[] => [...text].map((letter) => letter.charCodeAt(0));

/** A TIFF block with a first directory, an EXIF directory and a GPS directory. `little`: the byte order of most cameras. */
export const tiff = (
  little: boolean,
  given: { readonly taken?: string; readonly offset?: string; readonly gps?: boolean },
): number[] => {
  const short = (n: number) => (little ? [n & 255, n >> 8] : [n >> 8, n & 255]);
  const long = (n: number) =>
    little ? [...short(n & 0xffff), ...short(n >>> 16)] : [...short(n >>> 16), ...short(n & 0xffff)];
  const directory = (start: number, fields: readonly Field[]): number[] => {
    let beyond = start + 2 + fields.length * 12 + 4;
    const after: number[] = [];
    const rows = fields.flatMap(([tag, type, count, value]) => {
      const inline = value.length <= 4;
      const held = inline ? [...value, 0, 0, 0, 0].slice(0, 4) : long(beyond);
      if (!inline) {
        after.push(...value);
        beyond += value.length;
      }
      return [...short(tag), ...short(type), ...long(count), ...held];
    });
    return [...short(fields.length), ...rows, ...long(0), ...after];
  };
  const text = (tag: number, said: string): Field => [tag, 2, said.length + 1, [...bytesOf(said), 0]];
  const rational = (...parts: number[]): number[] => parts.flatMap((n) => [...long(n), ...long(1)]);
  const firstSize = 2 + 2 * 12 + 4;
  const exifAt = 8 + firstSize;
  const exif = directory(exifAt, [
    ...(given.taken ? [text(0x9003, given.taken)] : []),
    ...(given.offset ? [text(0x9011, given.offset)] : []),
  ]);
  const gpsAt = exifAt + exif.length;
  const gps = given.gps
    ? directory(gpsAt, [text(1, 'N'), [2, 5, 3, rational(52, 31, 7)], text(3, 'E'), [4, 5, 3, rational(13, 24, 36)]])
    : [];
  const first = directory(8, [
    [0x8769, 4, 1, long(exifAt)],
    given.gps ? [0x8825, 4, 1, long(gpsAt)] : [0x0112, 3, 1, short(1)],
  ]);
  return [...bytesOf(little ? 'II' : 'MM'), ...short(42), ...long(8), ...first, ...exif, ...gps];
};

const part = (marker: number, content: readonly number[]): number[] => [
  0xff,
  marker,
  (content.length + 2) >> 8,
  (content.length + 2) & 255,
  ...content,
];

export const jpeg = (parts: { readonly exif?: readonly number[]; readonly xmp?: string }): Uint8Array<ArrayBuffer> =>
  new Uint8Array([
    0xff,
    0xd8,
    ...(parts.exif ? part(0xe1, [...bytesOf('Exif\0\0'), ...parts.exif]) : []),
    ...(parts.xmp ? part(0xe1, [...bytesOf('http://ns.adobe.com/xap/1.0/\0'), ...bytesOf(parts.xmp)]) : []),
    // Frame header: 8 bits, 3024 high, 4032 wide, one component.
    ...part(0xc0, [8, 0x0b, 0xd0, 0x0f, 0xc0, 1, 1, 0x11, 0]),
    ...part(0xda, [1, 1, 0, 0, 63, 0]),
    1,
    2,
    3,
    4,
    0xff,
    0xd9,
  ]);
