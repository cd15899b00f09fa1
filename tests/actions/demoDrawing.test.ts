import { inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { outlines } from '../../src/demo/drawing/outlines';
import { type Cover, paintView, zoneMap } from '../../src/demo/drawing/paint';
import { writePng } from '../../src/demo/drawing/png';
import { garden } from '../../src/demo/garden';

const width = 200;
const height = 250;
const greens = (pixel: number) => pixel >= 9 && pixel <= 11;

test.each(garden.map((work) => work.number))(
  '%s: the cover drawn on each zone is the cover asked for, to a pixel',
  (number) => {
    const outline = outlines[number];
    if (!outline) throw new Error('no outline');
    const shares = [0, 0.005, 0.03, 0.2, 0.35, 0.75, 0.9];
    const covers: Record<string, Cover> = {};
    outline.zones.forEach(({ letter }, i) => {
      covers[letter] = { green: shares[i % shares.length] ?? 0 };
    });
    const { pixels } = paintView(outline, covers, 7, width);
    const map = zoneMap(outline, width, height);
    outline.zones.forEach(({ letter }, i) => {
      const places = [...map.keys()].filter((p) => map[p] === i + 1);
      const green = places.filter((p) => greens(pixels[p] ?? 0)).length;
      expect(Math.abs(green - (covers[letter]?.green ?? 0) * places.length), `${number} ${letter}`).toBeLessThanOrEqual(
        0.5,
      );
      expect(places.length, `${number} ${letter} is drawn`).toBeGreaterThan(20);
    });
  },
);

test('every zone of the garden is drawn, and nothing that is no zone', () => {
  for (const work of garden) {
    const drawn = (outlines[work.number]?.zones ?? []).map((z) => z.letter).sort();
    expect(drawn).toEqual(work.zones.map((z) => z.letter).sort());
  }
  expect(garden).toHaveLength(6);
  expect(garden.flatMap((work) => work.zones)).toHaveLength(39);
});

test('scale, bare metal and green never lie on one another: their shares add up', () => {
  const outline = outlines['SW-05'];
  if (!outline) throw new Error('no outline');
  const { pixels } = paintView(outline, { A: { green: 0.3, bare: 0.25, scale: 0.1 } }, 3, width);
  const map = zoneMap(outline, width, height);
  const at = outline.zones.findIndex((z) => z.letter === 'A') + 1;
  const places = [...map.keys()].filter((p) => map[p] === at);
  const share = (is: (pixel: number) => boolean) => places.filter((p) => is(pixels[p] ?? 0)).length / places.length;
  expect(share(greens)).toBeCloseTo(0.3, 2);
  expect(share((p) => p === 12)).toBeCloseTo(0.25, 2);
  expect(share((p) => p === 13)).toBeCloseTo(0.1, 2);
});

test('the same seed draws the same bytes, and the PNG holds the pixels it was given', () => {
  const outline = outlines['SW-06'];
  if (!outline) throw new Error('no outline');
  const picture = paintView(outline, { A: { green: 0.2 } }, 5, width);
  const png = writePng(picture);
  expect(writePng(paintView(outline, { A: { green: 0.2 } }, 5, width)).equals(png)).toBe(true);
  const from = png.indexOf('IDAT') + 4;
  const raw = inflateSync(png.subarray(from, from + png.readUInt32BE(from - 8)));
  const row = width / 2 + 1;
  for (const [x, y] of [
    [0, 0],
    [101, 120],
    [199, 249],
    [60, 170],
  ] as const) {
    const byte = raw[y * row + 1 + (x >> 1)] ?? 0;
    expect(x % 2 === 0 ? byte >> 4 : byte & 15).toBe(picture.pixels[y * width + x]);
  }
});
