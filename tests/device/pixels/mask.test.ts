import sharp from 'sharp';
import { afterEach, expect, test, vi } from 'vitest';
import { workPixels } from '../../../src/device/pixels';
import type { MaskAsked, Taps } from '../../../src/device/pixels/asked';
import { atHand } from '../../../src/device/pixels/atHand';
import { maskIn } from '../../../src/device/pixels/mask';
import { pixelNumbers } from '../../../src/device/pixels/pixelNumbers';
import { checkDotsFor, contains, isRefused, type Outline, type Rgb } from '../../../src/engine/photo';
import { standInCanvas } from '../../files/canvasOfSharp';
import { asJpeg, drawnPhoto } from '../../files/drawnPhotos';

afterEach(() => {
  vi.unstubAllGlobals();
});

const keptAs = (bytes: Uint8Array, mime = 'image/jpeg') => ({
  bring: async () => ({ bytes: new Uint8Array(bytes).buffer as ArrayBuffer, mime }),
});

const mask = async (
  ask: Omit<MaskAsked, 'do' | 'photo'> & Partial<Pick<MaskAsked, 'photo'>>,
  way: ReturnType<typeof keptAs>,
) => {
  const told = await workPixels({ do: 'mask', photo: { sha256: 'a' }, ...ask }, way);
  if (!told || isRefused(told)) throw new Error(`refused: ${JSON.stringify(told)}`);
  return told;
};

const pixelsOf = async (overlay: Blob) => {
  const { data, info } = await sharp(await overlay.arrayBuffer())
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { ...info, opaque: (x: number, y: number) => (data[4 * (y * info.width + x) + 3] as number) > 0 };
};

/** Left third green, the rest brown, a white bar along the foot. */
const banded = async (width = 300, height = 200) => {
  const [green, sound, white]: Rgb[] = [
    [110, 150, 128],
    [92, 70, 50],
    [255, 255, 255],
  ];
  const pixels = Uint8Array.from({ length: 3 * width * height }, (_, i) => {
    const at = Math.floor(i / 3);
    const [x, y] = [at % width, Math.floor(at / width)];
    const colour = y >= height * 0.9 ? white : x < width / 3 ? green : sound;
    return (colour as Rgb)[i % 3] as number;
  });
  return sharp(pixels, { raw: { width, height, channels: 3 } })
    .png()
    .toBuffer();
};
const taps: Taps = {
  green: [
    [110, 150, 128],
    [112, 150, 130],
    [108, 149, 127],
  ],
  sound: [
    [92, 70, 50],
    [90, 70, 52],
    [93, 71, 49],
  ],
};
const all: Outline = [
  [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ],
];

test('green, sound and glare of a part are counted to the pixel', async () => {
  standInCanvas();
  const told = await mask({ part: all, taps, seed: 1 }, keptAs(await banded(), 'image/png'));
  expect(told.judged).toBe(300 * 180);
  expect(told.share).toBeCloseTo(1 / 3, 10);
  expect(told.leftOut).toBeCloseTo(0.1, 10);
  expect(told.reasons).toEqual([]);
});

test('only the part is told, and the check dots lie in it, so many in the mask and outside it as are asked for', async () => {
  standInCanvas();
  const part: Outline = [
    [
      [0.2, 0.1],
      [0.6, 0.1],
      [0.6, 0.5],
      [0.2, 0.5],
    ],
  ];
  const told = await mask({ part, taps, seed: 7 }, keptAs(await banded(), 'image/png'));
  expect(told.judged).toBe(120 * 80);
  expect(told.share).toBeCloseTo(1 / 3, 10);
  expect([told.inMask.length, told.outsideMask.length]).toEqual(Object.values(checkDotsFor(told.share)));
  for (const dot of [...told.inMask, ...told.outsideMask]) expect(contains(part, dot)).toBe(true);
  for (const [x] of told.inMask) expect(x).toBeLessThan(1 / 3);
  for (const [x] of told.outsideMask) expect(x).toBeGreaterThan(1 / 3);
});

test('the picture of the mask is clear outside the part and on sound surface, and inked on green', async () => {
  standInCanvas();
  const part: Outline = [
    [
      [0.1, 0.1],
      [0.9, 0.1],
      [0.9, 0.8],
      [0.1, 0.8],
    ],
  ];
  const { overlay } = await mask({ part, taps, seed: 7 }, keptAs(await banded(), 'image/png'));
  const { width, height, opaque } = await pixelsOf(overlay);
  expect([width, height]).toEqual([pixelNumbers.overlay, Math.round((pixelNumbers.overlay * 200) / 300)]);
  const inked = (from: number, to: number, top: number, foot: number): number => {
    let many = 0;
    for (let y = Math.ceil(top * height); y < Math.floor(foot * height); y++)
      for (let x = Math.ceil(from * width); x < Math.floor(to * width); x++) if (opaque(x, y)) many++;
    return many / ((to - from) * width * (foot - top) * height);
  };
  expect(inked(0, 0.099, 0, 1)).toBe(0);
  expect(inked(0.334, 1, 0, 1)).toBe(0);
  expect(inked(0.12, 0.32, 0.15, 0.75)).toBeGreaterThan(0.1);
  expect(inked(0.12, 0.32, 0.15, 0.75), 'the bronze under it is still seen').toBeLessThan(0.4);
});

test('the brush puts right what colour tells wrongly, glare too, and the same question is answered the same', async () => {
  standInCanvas();
  const way = keptAs(await banded(), 'image/png');
  const brush = [
    {
      as: 'sound' as const,
      radius: 0.05,
      path: [
        [0.1, 0.3],
        [0.2, 0.3],
      ] as [number, number][],
    },
    { as: 'green' as const, radius: 0.02, path: [[0.5, 0.95]] as [number, number][] },
  ];
  const plain = await mask({ part: all, taps, seed: 3 }, way);
  const told = await mask({ part: all, taps: { ...taps, brush }, seed: 3 }, way);
  expect(told.share).toBeLessThan(plain.share);
  expect(told.leftOut).toBeLessThan(plain.leftOut);
  const again = await mask({ part: all, taps: { ...taps, brush }, seed: 3 }, way);
  expect({ ...again, overlay: 0 }).toEqual({ ...told, overlay: 0 });
  expect(new Uint8Array(await again.overlay.arrayBuffer())).toEqual(new Uint8Array(await told.overlay.arrayBuffer()));
});

test('a stroke more asks for no pixel anew, and taken back it leaves the mask that was there before', async () => {
  const drawn = standInCanvas();
  const hand = atHand(keptAs(await banded(), 'image/png').bring);
  const ask = async (brush: Taps['brush']) => {
    const told = await maskIn(
      hand,
      { do: 'mask', photo: { sha256: 'a' }, part: all, taps: { ...taps, brush }, seed: 3 },
      async () => undefined,
    );
    if (isRefused(told)) throw new Error('refused');
    return told.share;
  };
  const plain = await ask(undefined);
  const { drawings } = drawn;
  expect(await ask([{ as: 'green', radius: 0.1, path: [[0.7, 0.5]] }])).toBeGreaterThan(plain);
  expect(await ask([])).toBe(plain);
  expect(drawn.drawings).toBe(drawings);
  hand.letGo();
  expect(await ask([]), 'let go, it is read again').toBe(plain);
  expect(drawn.drawings).toBe(2 * drawings);
});

test('on a drawn photo of known coverage, pressed as a camera does, the mask finds the share that was drawn', async () => {
  standInCanvas();
  const drawn = drawnPhoto({ seed: 5, coverage: 0.22, light: 0.4, noise: 3 });
  const tapped = (sort: 0 | 1): Rgb[] =>
    [0.2, 0.5, 0.8].map((share) => {
      const places = [...drawn.inZone.keys()].filter((at) => drawn.inZone[at] === 1 && drawn.isGreen[at] === sort);
      const at = places[Math.floor(share * places.length)] as number;
      return [...drawn.pixels.subarray(3 * at, 3 * at + 3)] as unknown as Rgb;
    });
  const bytes = await asJpeg(drawn, 90);
  const told = await mask({ part: drawn.zone, taps: { green: tapped(1), sound: tapped(0) }, seed: 2 }, keptAs(bytes));
  expect(Math.abs(told.share - drawn.share)).toBeLessThan(0.03);
});

test('no canvas is larger than a strip, the bitmap is let go, and of a very large photo less is unpacked, which is said', async () => {
  const drawn = standInCanvas();
  const large = await sharp({ create: { width: 5000, height: 3600, channels: 3, background: { r: 92, g: 70, b: 50 } } })
    .jpeg({ quality: 40 })
    .toBuffer();
  const told = await mask(
    { photo: { sha256: 'a', size: { width: 5000, height: 3600 } }, part: all, taps, seed: 1 },
    keptAs(large),
  );
  expect(drawn.bitmaps).toHaveLength(1);
  const { width = 0, height = 0, closed } = drawn.bitmaps[0] ?? {};
  expect(width * height).toBeLessThanOrEqual(pixelNumbers.most);
  expect(width * height).toBeGreaterThan(pixelNumbers.most * 0.99);
  expect(closed).toBe(true);
  expect(drawn.largest).toBeLessThanOrEqual(Math.max(pixelNumbers.strip, pixelNumbers.overlay ** 2));
  expect(told.reasons).toEqual([
    { code: 'pixels worked smaller', params: { megapixels: 18, worked: expect.closeTo(12.58, 1) } },
  ]);
  expect(told.share).toBe(0);
});

test('left off between two strips, it tells nothing and lets the photo go', async () => {
  const drawn = standInCanvas();
  const leave = new AbortController();
  const said: number[] = [];
  const heard = (done: number) => {
    said.push(done);
    if (said.length === 2) leave.abort();
  };
  const large = await sharp({ create: { width: 3000, height: 2000, channels: 3, background: 'brown' } })
    .png()
    .toBuffer();
  const told = await workPixels(
    { do: 'mask', photo: { sha256: 'a' }, part: all, taps, seed: 1 },
    { ...keptAs(large, 'image/png'), heard, signal: leave.signal },
  );
  expect(told).toBeUndefined();
  expect(said).toHaveLength(2);
  expect(drawn.bitmaps.every(({ closed }) => closed)).toBe(true);
});

test('taps too alike are refused with the reason', async () => {
  standInCanvas();
  const told = await workPixels(
    { do: 'mask', photo: { sha256: 'a' }, part: all, taps: { green: taps.sound, sound: taps.sound }, seed: 1 },
    keptAs(await banded(), 'image/png'),
  );
  expect(told).toEqual({ refused: [expect.objectContaining({ code: 'coverage: green and sound too alike' })] });
});

test.each<[harm: string, code: string, given: () => Parameters<typeof workPixels>[1]]>([
  ['bytes that are not on this device', 'photo not here', () => ({ bring: async () => undefined })],
  ['bytes no browser opens', 'picture not opened', () => keptAs(new Uint8Array([1, 2, 3]))],
])('%s are told of as such', async (_, code, given) => {
  standInCanvas();
  await expect(workPixels({ do: 'colour', photo: { sha256: 'a' }, at: [0.5, 0.5] }, given())).rejects.toMatchObject({
    reason: { code },
  });
});

test('a browser that gives no way to read pixels, and one that alters what is read, are found out and told of', async () => {
  const way = keptAs(await banded(), 'image/png');
  const ask = { do: 'colour', photo: { sha256: 'a' }, at: [0.5, 0.5] } as const;
  await expect(workPixels(ask, way)).rejects.toMatchObject({ reason: { code: 'pixels not at hand' } });
  standInCanvas((value, at) => (at === 61 ? value ^ 1 : value));
  await expect(workPixels(ask, way)).rejects.toMatchObject({ reason: { code: 'pixels altered' } });
});

test('the colour at a tap is that of the surface there, not of a speck, and taps in the corner have one', async () => {
  standInCanvas();
  const { data, info } = await sharp(await banded(600, 400))
    .raw()
    .toBuffer({ resolveWithObject: true });
  for (const i of [0, 1, 2]) data[3 * (200 * info.width + 400) + i] = 255;
  const bytes = await sharp(data, { raw: { width: 600, height: 400, channels: 3 } })
    .png()
    .toBuffer();
  const at = async (x: number, y: number) =>
    (await workPixels({ do: 'colour', photo: { sha256: 'a' }, at: [x, y] }, keptAs(bytes, 'image/png')))?.colour;
  expect(await at(400.5 / 600, 200.5 / 400)).toEqual([92, 70, 50]);
  expect(await at(0, 0)).toEqual([110, 150, 128]);
  expect(await at(1, 1)).toEqual([255, 255, 255]);
});
