import sharp from 'sharp';
import { afterEach, expect, test, vi } from 'vitest';
import { workPixels } from '../../../src/device/pixels';
import type { ChangeAsked, Taps } from '../../../src/device/pixels/asked';
import { changeCounts, changeKind, changeKinds } from '../../../src/device/pixels/changeKinds';
import {
  fitPhotos,
  isRefused,
  type Outline,
  type Pair,
  type PlaneMap,
  type Point,
  pixelClass,
  type Rgb,
} from '../../../src/engine/photo';
import { standInCanvas } from '../../files/canvasOfSharp';

afterEach(() => {
  vi.unstubAllGlobals();
});

const green: Rgb = [110, 150, 128];
const sound: Rgb = [92, 70, 50];
const taps: Taps = { green: [green, green, green], sound: [sound, sound, sound] };
const size = { width: 400, height: 300 };
const same: PlaneMap = [1, 0, 0, 0, 1, 0, 0, 0, 1];
const all: Outline = [
  [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ],
];

/** A photo that is green where it is said, in fractions. */
const photo = (isGreen: (x: number, y: number) => boolean) =>
  sharp(
    Uint8Array.from({ length: 3 * size.width * size.height }, (_, i) => {
      const at = Math.floor(i / 3);
      const is = isGreen(((at % size.width) + 0.5) / size.width, (Math.floor(at / size.width) + 0.5) / size.height);
      return (is ? green : sound)[i % 3] as number;
    }),
    { raw: { ...size, channels: 3 } },
  )
    .png()
    .toBuffer();

const square = (left: number, top: number, side: number) => (x: number, y: number) =>
  x >= left && x < left + side && y >= top && y < top + side;

const change = async (photos: Readonly<Record<'earlier' | 'later', Uint8Array>>, more: Partial<ChangeAsked> = {}) => {
  const ask: ChangeAsked = {
    do: 'change',
    earlier: { sha256: 'earlier' },
    later: { sha256: 'later' },
    matrix: same,
    part: all,
    earlierTaps: taps,
    laterTaps: taps,
    edge: 0.005,
    ...more,
  };
  const bring = async (name: string) => ({
    bytes: new Uint8Array(photos[name as 'earlier' | 'later']).buffer as ArrayBuffer,
    mime: 'image/png',
  });
  const told = await workPixels(ask, { bring });
  if (!told || isRefused(told)) throw new Error(`refused: ${JSON.stringify(told)}`);
  return told;
};

test('a new patch, one that is gone and one that stayed are each told, and all of the part is told once', async () => {
  const drawn = standInCanvas();
  const [gone, stayed, came] = [square(0.1, 0.1, 0.2), square(0.4, 0.4, 0.2), square(0.7, 0.1, 0.1)];
  const told = await change({
    earlier: await photo((x, y) => gone(x, y) || stayed(x, y)),
    later: await photo((x, y) => stayed(x, y) || came(x, y)),
  });
  expect(told.newly.value).toBeCloseTo(0.01, 6);
  expect(told.noLonger.value).toBeCloseTo(0.04, 6);
  expect(told.still.value).toBeCloseTo(0.04, 6);
  expect(told.newly.value + told.noLonger.value + told.still.value + told.neither + told.leftOut).toBeCloseTo(1, 10);
  expect(
    drawn.bitmaps.map(({ closed }) => closed),
    'both photos let go',
  ).toEqual([true, true]);
});

test('a photo lying askew by what the pairs say tells no change where there was none', async () => {
  standInCanvas();
  const patches = (x: number, y: number) => square(0.3, 0.3, 0.15)(x, y) || square(0.55, 0.5, 0.2)(x, y);
  const angle = (3 * Math.PI) / 180;
  const aspect = size.height / size.width;
  // Where the later photo sees a place of the earlier one: turned by three degrees, a little larger, moved.
  const moved = ([x, y]: Point): Point => {
    const [dx, dy] = [(x - 0.5) * 1.04, (y - 0.5) * aspect * 1.04];
    return [
      0.51 + Math.cos(angle) * dx - Math.sin(angle) * dy,
      0.49 + (Math.sin(angle) * dx + Math.cos(angle) * dy) / aspect,
    ];
  };
  const tapped: Point[] = [
    [0.2, 0.2],
    [0.8, 0.25],
    [0.75, 0.8],
    [0.25, 0.7],
    [0.5, 0.5],
  ];
  const pairs = tapped.map(([x, y]): Pair => ({ from: [x, y], onto: [...moved([x, y])] }));
  const fit = fitPhotos(pairs, size, size, 'similarity');
  if (isRefused(fit)) throw new Error('no fit');
  const later = await photo((x, y) => patches(...fit.back([x, y])));
  const part: Outline = [
    [
      [0.2, 0.2],
      [0.85, 0.2],
      [0.85, 0.8],
      [0.2, 0.8],
    ],
  ];
  const told = await change({ earlier: await photo(patches), later }, { matrix: fit.matrix, part });
  expect(told.newly.value).toBe(0);
  expect(told.noLonger.value).toBe(0);
  expect(told.still.value).toBeGreaterThan(0.1);
  const untold = await change({ earlier: await photo(patches), later }, { part });
  expect(untold.newly.value, 'without the fit it would be a change').toBeGreaterThan(0.01);
});

test('an edge that moved by less than the photos may be misplaced is no change; the range tells what none and twice of that would say', async () => {
  standInCanvas();
  const grown = await change(
    { earlier: await photo(square(0.3, 0.3, 0.3)), later: await photo(square(0.29, 0.29, 0.32)) },
    { edge: 0.015 },
  );
  expect(grown.newly.value).toBe(0);
  expect(grown.newly.high).toBeCloseTo(0.32 ** 2 - 0.3 ** 2, 2);
  expect(grown.newly.low).toBe(0);
  expect(grown.still.high).toBeGreaterThanOrEqual(grown.still.value);
});

test('what lies outside the earlier photo is left out and no change', async () => {
  standInCanvas();
  const half: PlaneMap = [1, 0, 0.5, 0, 1, 0, 0, 0, 1];
  const told = await change({ earlier: await photo(() => false), later: await photo(() => true) }, { matrix: half });
  expect(told.leftOut).toBeCloseTo(0.5, 2);
  expect(told.newly.value).toBeCloseTo(0.5, 2);
  expect(told.reasons.map(({ code }) => code)).toContain('change left out');
});

test('taps that do not tell are refused, and it is said of which photo', async () => {
  standInCanvas();
  const bring = async () => undefined;
  const told = await workPixels(
    {
      ...{ do: 'change', earlier: { sha256: 'earlier' }, later: { sha256: 'later' }, matrix: same, part: all },
      ...{ earlierTaps: taps, laterTaps: { green: [], sound: taps.sound }, edge: 0.01 },
    },
    { bring },
  );
  expect(told && 'refused' in told && told.refused.map(({ code }) => code)).toEqual([
    'taps of the later photo',
    'coverage: too few spots tapped',
  ]);
});

test('with no reach a pixel is told by itself; what neither photo tells is left out', () => {
  const { sound: s, green: g, leftOut: l } = pixelClass;
  const earlier = Uint8Array.of(s, s, g, g, l, g, s);
  const later = Uint8Array.of(s, g, s, g, g, l, g);
  const inPart = Uint8Array.of(1, 1, 1, 1, 1, 1, 0);
  const kinds = changeKinds({ width: 7, height: 1, inPart, earlier, later }, 0);
  expect([...kinds]).toEqual([
    changeKind.neither,
    changeKind.newly,
    changeKind.noLonger,
    changeKind.still,
    changeKind.leftOut,
    changeKind.leftOut,
    changeKind.outside,
  ]);
  expect(changeCounts(kinds)).toEqual({ neither: 1, newly: 1, noLonger: 1, still: 1, leftOut: 2, outside: 1 });
});

test('green that slipped over the edge of the zone by less than the photos may be misplaced is no change', async () => {
  standInCanvas();
  const part: Outline = [
    [
      [0.3, 0.2],
      [0.7, 0.2],
      [0.7, 0.8],
      [0.3, 0.8],
    ],
  ];
  const slipped = await change(
    { earlier: await photo(square(0.1, 0.3, 0.195)), later: await photo(square(0.11, 0.3, 0.195)) },
    { part, edge: 0.015 },
  );
  expect(slipped.newly.value).toBe(0);
  expect(slipped.newly.high).toBeGreaterThan(0);
  expect(slipped.leftOut, 'nothing of the zone is lost at its edge').toBe(0);
});
