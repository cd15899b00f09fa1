// node src/build/icons.mjs: draws the app's icons into public/. A bronze ring, open at the upper right, where a pale arc
// of fresh metal stands in the gap: one round of the year not yet walked. Run again only when the drawing changes.
import { writeFileSync } from 'node:fs';
import { crc32, deflateSync } from 'node:zlib';
import sharp from 'sharp';

const ground = [246, 242, 234];
const bronze = [110, 74, 45];
const fresh = [196, 160, 104];
const perSide = 4; // samples a pixel, each way

/** `reach`: outer radius of the ring, in halves of the picture. `corner`: radius of the clear corners, same unit. */
for (const [file, size, reach, corner] of [
  ['icon-192.png', 192, 0.74, 0.36],
  ['icon-512.png', 512, 0.74, 0.36],
  // Maskable: the platform cuts its own shape, and only the middle 80 % is sure to be seen.
  ['icon-maskable-512.png', 512, 0.56, 0],
  ['apple-touch-icon.png', 180, 0.68, 0],
]) {
  const drawn = png(size, (x, y) => colourAt(x, y, reach, corner));
  // Fewer than 256 colours, so a palette holds them all: a third less on the tablet.
  writeFileSync(`public/${file}`, await sharp(drawn).png({ palette: true, effort: 10 }).toBuffer());
}

/** x and y from -1 to 1, y upwards. Gives red, green, blue, opacity. */
function colourAt(x, y, reach, corner) {
  const beyond = Math.hypot(Math.max(Math.abs(x) - (1 - corner), 0), Math.max(Math.abs(y) - (1 - corner), 0));
  if (corner > 0 && beyond > corner) return [...ground, 0];
  const middle = reach * 0.86;
  const half = reach * 0.14;
  const turn = (Math.atan2(y, x) * 180) / Math.PI;
  if (onArc(x, y, turn, 82, 368, middle, half)) return [...bronze, 255];
  if (onArc(x, y, turn, 29, 61, middle, half * 0.62)) return [...fresh, 255];
  return [...ground, 255];
}

/** An arc from one angle to another, counter-clockwise in degrees, with round ends. */
function onArc(x, y, turn, from, to, radius, half) {
  const inside = (((turn - from) % 360) + 360) % 360 <= to - from;
  if (inside) return Math.abs(Math.hypot(x, y) - radius) <= half;
  return [from, to].some((end) => {
    const angle = (end * Math.PI) / 180;
    return Math.hypot(x - radius * Math.cos(angle), y - radius * Math.sin(angle)) <= half;
  });
}

function png(size, colour) {
  const rows = Buffer.alloc(size * (size * 4 + 1));
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < size; column++) {
      rows.set(pixel(row, column, size, colour), row * (size * 4 + 1) + 1 + column * 4);
    }
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(size, 0);
  head.writeUInt32BE(size, 4);
  head.set([8, 6, 0, 0, 0], 8); // 8 bits, red green blue opacity
  const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);
  return Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', deflateSync(rows, { level: 9 })), chunk('IEND')]);
}

/** The mean of the samples, weighted by their opacity so that clear corners do not bleed colour. */
function pixel(row, column, size, colour) {
  const sum = [0, 0, 0, 0];
  for (let i = 0; i < perSide * perSide; i++) {
    const x = ((column + ((i % perSide) + 0.5) / perSide) / size) * 2 - 1;
    const y = 1 - ((row + (Math.floor(i / perSide) + 0.5) / perSide) / size) * 2;
    const [r, g, b, a] = colour(x, y);
    sum[0] += r * a;
    sum[1] += g * a;
    sum[2] += b * a;
    sum[3] += a;
  }
  const [r, g, b, a] = sum;
  return a === 0 ? [0, 0, 0, 0] : [r / a, g / a, b / a, a / (perSide * perSide)].map(Math.round);
}

function chunk(name, data = Buffer.alloc(0)) {
  const named = Buffer.concat([Buffer.from(name, 'ascii'), data]);
  const size = Buffer.alloc(4);
  size.writeUInt32BE(data.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(named));
  return Buffer.concat([size, named, check]);
}
