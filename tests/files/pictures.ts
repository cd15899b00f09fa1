import { createHash } from 'node:crypto';
import sharp from 'sharp';
import { checksum } from '../../src/device/photo/pngParts';

export const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** A JPEG as grainy as a photo of bronze, of so many pixels. */
export const grainyJpeg = async (width: number, height: number, quality = 85): Promise<Buffer> => {
  const create = {
    width: Math.ceil(width / 4),
    height: Math.ceil(height / 4),
    channels: 3 as const,
    background: '#6a5a44',
  };
  const grain = await sharp({ create: { ...create, noise: { type: 'gaussian', mean: 110, sigma: 36 } } })
    .png({ compressionLevel: 1 })
    .toBuffer();
  return sharp(grain).resize(width, height, { kernel: 'cubic', fit: 'fill' }).jpeg({ quality }).toBuffer();
};

/** The same picture with a comment of its own: another file, another hash. */
export const withComment = (jpeg: Uint8Array, text: string): Buffer => {
  const said = Buffer.from(text);
  const head = Buffer.from([0xff, 0xfe, (said.length + 2) >> 8, (said.length + 2) & 255]);
  return Buffer.concat([jpeg.subarray(0, 2), head, said, jpeg.subarray(2)]);
};

/** A small PNG whose header says it is `width` by `height`, with a checksum to match the lie. */
export const lyingPng = async (width: number, height: number): Promise<Buffer> => {
  const png = await sharp({ create: { width: 120, height: 90, channels: 3, background: '#6a5a44' } })
    .png()
    .toBuffer();
  png.writeUInt32BE(width, 16);
  png.writeUInt32BE(height, 20);
  png.writeUInt32BE(checksum(png.subarray(12, 29)), 29);
  return png;
};

/** The first bytes of a HEIC, and nothing a browser could show after them. */
export const heic = (): Buffer =>
  Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from('ftypheic\0\0\0\0mif1heic'), Buffer.alloc(4000, 7)]);

export const svg = (): Buffer =>
  Buffer.from('<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script/></svg>');

export const orientations = [1, 2, 3, 4, 5, 6, 7, 8] as const;

/** A picture red, green over blue, white, 720 by 480 upright, as a camera held that way leaves it in the file (Exif 2.32, 4.6.4). */
export const heldAs = async (orientation: (typeof orientations)[number]): Promise<Buffer> => {
  const field = (background: string, left: number, top: number) => ({
    input: { create: { width: 360, height: 240, channels: 3 as const, background } },
    left,
    top,
  });
  const upright = await sharp({ create: { width: 720, height: 480, channels: 3, background: '#fff' } })
    .composite([field('#f00', 0, 0), field('#0f0', 360, 0), field('#00f', 0, 240)])
    .png()
    .toBuffer();
  // Each undoes what the orientation tells a reader to do.
  const turned = { 3: 180, 4: 180, 5: 90, 6: 270, 7: 270, 8: 90 } as const;
  const angle = turned[orientation as keyof typeof turned] ?? 0;
  const lying = await sharp(upright).rotate(angle).png().toBuffer();
  const mirrored = [2, 4, 5, 7].includes(orientation) ? await sharp(lying).flop().png().toBuffer() : lying;
  const file = await sharp(mirrored).withMetadata({ orientation }).jpeg({ quality: 95 }).toBuffer();
  const back = await sharp(file).rotate().raw().toBuffer({ resolveWithObject: true });
  if (back.info.width !== 720 || back.data[0]! < 128 || back.data[1]! > 127)
    throw new Error(`The picture of orientation ${orientation} does not come out as it was painted.`);
  return file;
};
