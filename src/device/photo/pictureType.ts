export type PictureType = 'image/jpeg' | 'image/png' | 'image/webp' | 'image/heic' | 'image/avif';

const starts = (bytes: Uint8Array, at: number, text: string): boolean =>
  [...text].every((letter, i) => bytes[at + i] === letter.charCodeAt(0));

const heic = ['heic', 'heix', 'hevc', 'heim', 'heis', 'mif1', 'msf1'];

/** What a file is by its first bytes; its name and the type the browser gives are not asked. */
export const pictureType = (bytes: Uint8Array): PictureType | undefined => {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'image/jpeg';
  if (bytes[0] === 0x89 && starts(bytes, 1, 'PNG\r\n\u001a\n')) return 'image/png';
  if (starts(bytes, 0, 'RIFF') && starts(bytes, 8, 'WEBP')) return 'image/webp';
  if (!starts(bytes, 4, 'ftyp')) return undefined;
  if (starts(bytes, 8, 'avif')) return 'image/avif';
  return heic.some((brand) => starts(bytes, 8, brand)) ? 'image/heic' : undefined;
};
