import { crc32, deflateSync } from 'node:zlib';

const chunk = (type: string, data: Buffer): Buffer => {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const ends = Buffer.alloc(8);
  ends.writeUInt32BE(data.length, 0);
  ends.writeUInt32BE(crc32(body), 4);
  return Buffer.concat([ends.subarray(0, 4), body, ends.subarray(4)]);
};

/** A picture of a side: a grey work of two blocks before a lighter ground, as a PNG any browser shows. */
export const sidePng = ({ width, height }: { readonly width: number; readonly height: number }): Buffer => {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 0, 0, 0, 0], 8);
  const rows = Buffer.alloc((width + 1) * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [u, v] = [x / width, y / height];
      const upper = Math.abs(u - 0.5) < 0.2 && v > 0.1 && v < 0.5;
      const lower = Math.abs(u - 0.5) < 0.3 && v >= 0.5 && v < 0.9;
      rows[y * (width + 1) + 1 + x] = upper ? 90 : lower ? 60 : 200;
    }
  }
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
};

export const pictureOf = (size: { readonly width: number; readonly height: number }): Blob =>
  new Blob([new Uint8Array(sidePng(size))], { type: 'image/png' });
