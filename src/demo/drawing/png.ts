import { crc32, deflateSync } from 'node:zlib';
import { type Picture, palette } from './paint';

const chunk = (type: string, data: Buffer): Buffer => {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
};

/** Writes a picture as a PNG with a palette, four bits a pixel (PNG, ISO/IEC 15948); `light` makes all of it duller or brighter. At build time only. */
export const writePng = ({ width, height, pixels }: Picture, light = 1): Buffer => {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([4, 3, 0, 0, 0], 8);
  const row = Math.ceil(width / 2) + 1;
  const raw = Buffer.alloc(row * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = y * row + 1 + (x >> 1);
      raw[at] = (raw[at] ?? 0) | ((pixels[y * width + x] ?? 0) << (x % 2 === 0 ? 4 : 0));
    }
  }
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('PLTE', Buffer.from(palette.flat().map((c) => Math.min(255, Math.round(c * light))))),
    chunk('IDAT', deflateSync(raw, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
};
