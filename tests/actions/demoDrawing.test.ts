import { inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { shownAt } from '../../src/demo/drawing/camera';
import { zoneLines } from '../../src/demo/drawing/outlineOf';
import { outlines } from '../../src/demo/drawing/outlines';
import { type Cover, paintView, zoneMap } from '../../src/demo/drawing/paint';
import { writePng } from '../../src/demo/drawing/png';
import { paintSquare } from '../../src/demo/drawing/square';
import { garden } from '../../src/demo/garden';
import { contains } from '../../src/engine/photo';

const width = 200;
const height = 250;
const greens = (pixel: number) => pixel === 7 || pixel === 8;

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
    const { pixels } = paintView(outline, covers, 7, { width });
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
  const { pixels } = paintView(outline, { A: { green: 0.3, bare: 0.25, scale: 0.1 } }, 3, { width });
  const map = zoneMap(outline, width, height);
  const at = outline.zones.findIndex((z) => z.letter === 'A') + 1;
  const places = [...map.keys()].filter((p) => map[p] === at);
  const share = (is: (pixel: number) => boolean) => places.filter((p) => is(pixels[p] ?? 0)).length / places.length;
  expect(share(greens)).toBeCloseTo(0.3, 2);
  expect(share((p) => p === 9)).toBeCloseTo(0.25, 2);
  expect(share((p) => p === 10)).toBeCloseTo(0.1, 2);
});

test('the same seed draws the same bytes, and the PNG holds the pixels it was given', () => {
  const outline = outlines['SW-06'];
  if (!outline) throw new Error('no outline');
  const picture = paintView(outline, { A: { green: 0.2 } }, 5, { width });
  const png = writePng(picture);
  expect(writePng(paintView(outline, { A: { green: 0.2 } }, 5, { width })).equals(png)).toBe(true);
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

test('seen from elsewhere the cover stays what it is and its patches move with the work', () => {
  const outline = outlines['SW-02'];
  if (!outline) throw new Error('no outline');
  const covers = { D: { green: 0.3 }, H: { green: 0.4 } };
  const camera = { turn: 1.5, scale: 0.96, aside: 2, up: -1, lean: 0, light: 0.9 };
  const before = paintView(outline, covers, 7, { width });
  const after = paintView(outline, covers, 7, { width, camera });
  const map = zoneMap(outline, width, height, camera);
  let same = 0;
  let all = 0;
  for (const [place, zone] of map.entries()) {
    if (zone === 0) continue;
    const [x, y] = shownAt(camera, [((place % width) + 0.5) / 2, (Math.floor(place / width) + 0.5) / 2]);
    const there = Math.floor(y * 2) * width + Math.floor(x * 2);
    all++;
    if (greens(after.pixels[place] ?? 0) === greens(before.pixels[there] ?? 0)) same++;
  }
  expect(all).toBeGreaterThan(2000);
  expect(same / all).toBeGreaterThan(0.95);
});

test('a sentinel square holds exactly its share of green inside the rim', () => {
  const { pixels, width: across } = paintSquare(0.17, 4, 120);
  const inside = [...pixels.keys()].filter((p) =>
    [p % across, Math.floor(p / across)].every((at) => at >= 10 && at < across - 10),
  );
  expect(inside.filter((p) => greens(pixels[p] ?? 0)).length / inside.length).toBeCloseTo(0.17, 3);
  expect([...pixels].filter(greens)).toHaveLength(Math.round(inside.length * 0.17));
});

test.each(garden.map((work) => work.number))(
  '%s: outlines drawn on the elevation hold the pixels of their zone',
  (number) => {
    const outline = outlines[number];
    if (!outline) throw new Error('no outline');
    const map = zoneMap(outline, width, height);
    const lines = zoneLines(outline);
    for (const [i, { letter }] of outline.zones.entries()) {
      const rings = lines.get(letter) ?? [];
      const inside = [...map.keys()].filter((p) =>
        contains(rings, [((p % width) + 0.5) / width, (Math.floor(p / width) + 0.5) / height]),
      );
      const own = [...map.keys()].filter((p) => map[p] === i + 1);
      const held = own.filter((p) => inside.includes(p)).length;
      expect(held / own.length, `${number} ${letter}`).toBeGreaterThan(0.9);
      expect(
        rings.flat().every(([x, y]) => x >= 0 && x <= 1 && y >= 0 && y <= 1),
        `${number} ${letter}`,
      ).toBe(true);
    }
  },
);
