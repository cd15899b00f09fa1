import sharp from 'sharp';
import { afterEach, expect, test, vi } from 'vitest';
import {
  type ChangeMapOf,
  changeMapOf,
  colourAt,
  commitChanges,
  type Desk,
  keepPhoto,
  type MaskOf,
  type MaskSeen,
  maskOf,
  pixelsUnderWay,
  type Question,
} from '../../src/actions';
import { fitPhotos, isRefused, type Outline, type Pair, type Refused, type Rgb } from '../../src/engine/photo';
import { nameOf } from '../../src/engine/record';
import { standInCanvas } from '../files/canvasOfSharp';
import { aWork, done, freshDesk } from '../screens/deskwork';

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

const green: Rgb = [110, 150, 128];
const sound: Rgb = [92, 70, 50];
const part: Outline = [
  [
    [0.1, 0.1],
    [0.9, 0.1],
    [0.9, 0.9],
    [0.1, 0.9],
  ],
];
const taps = { green: [green, green, green], sound: [sound, sound, sound] };
const of: MaskOf = { part, ...taps, seed: 1 };

/** Upper half green. */
const halves = async (width = 200, height = 100): Promise<Blob> => {
  const bytes = await sharp({ create: { width, height, channels: 3, background: `rgb(${sound.join()})` } })
    .composite([
      {
        input: { create: { width, height: height / 2, channels: 3, background: `rgb(${green.join()})` } },
        left: 0,
        top: 0,
      },
    ])
    .png()
    .toBuffer();
  return new Blob([new Uint8Array(bytes)], { type: 'image/png' });
};

const withPhoto = async (seed: number, file?: Blob): Promise<{ desk: Desk; sculpture: string; photo: string }> => {
  const desk = await freshDesk(seed);
  const { sculpture } = await aWork(desk, { title: 'One', number: '1', areas: [2] });
  const { photo } = await done(keepPhoto(desk, sculpture, file ?? (await halves()), 'zone'));
  return { desk, sculpture, photo };
};

/** Addresses given out and given back. */
const addresses = () => {
  const out = new Set<string>();
  vi.spyOn(URL, 'createObjectURL').mockImplementation(() => {
    const address = `blob:${out.size + 1}`;
    out.add(address);
    return address;
  });
  vi.spyOn(URL, 'revokeObjectURL').mockImplementation((address) => void out.delete(address));
  return out;
};

const lookAt = async <T>(question: Question<T>): Promise<{ value: T; leave: () => void }> => {
  const leave = question.subscribe(() => undefined);
  await expect.poll(() => question.get() !== undefined).toBe(true);
  return { value: question.get() as T, leave };
};

const seen = (value: MaskSeen | Refused): MaskSeen => {
  if (isRefused(value)) throw new Error(`refused: ${JSON.stringify(value)}`);
  return value;
};

test('a mask is told of the kept photo, is the same question for the same touches, and its picture is given back when nobody looks', async () => {
  const { desk, photo } = await withPhoto(1);
  standInCanvas();
  const out = addresses();
  const question = maskOf(desk, photo, of);
  expect(maskOf(desk, photo, { ...of })).toBe(question);
  expect(maskOf(desk, photo, { ...of, seed: 2 })).not.toBe(question);
  const { value, leave } = await lookAt(question);
  expect(seen(value).share).toBeCloseTo(0.5, 10);
  expect(question.get()).toBe(value);
  expect([...out]).toEqual([seen(value).overlay]);
  vi.useFakeTimers();
  leave();
  vi.advanceTimersByTime(1000);
  expect(out.size, 'a screen left and entered again keeps its picture').toBe(1);
  vi.advanceTimersByTime(2000);
  expect(out.size).toBe(0);
});

test('what nobody looks at any more is left off and makes no picture; how far it is can be seen meanwhile', async () => {
  const { desk, photo } = await withPhoto(2, await halves(3000, 1400));
  standInCanvas();
  const out = addresses();
  const under = pixelsUnderWay(desk);
  const done: number[] = [];
  const question = maskOf(desk, photo, of);
  const leave = question.subscribe(() => undefined);
  await new Promise<void>((resolve) => {
    const stop = under.subscribe(() => {
      const now = under.get();
      if (now) done.push(now.done);
      if (now && now.done > 0) {
        leave();
      } else if (now === null) {
        stop();
        resolve();
      }
    });
  });
  expect(done.length).toBeGreaterThan(1);
  expect(question.get()).toBeUndefined();
  expect(out.size).toBe(0);
  const { value } = await lookAt(maskOf(desk, photo, of));
  expect(seen(value).share, 'asked again, it is worked out').toBeCloseTo(0.5, 10);
});

test('a photo that is not on this device, one that was cut, and taps that do not tell are each refused with their reason', async () => {
  const { desk, sculpture, photo } = await withPhoto(3);
  standInCanvas();
  const far = nameOf.photo('c'.repeat(64));
  const cut = nameOf.photo('d'.repeat(64));
  const body = { sculpture, mime: 'image/jpeg', bytes: 9, role: 'zone' as const, width: 40, height: 30 };
  await done(
    commitChanges(desk, { code: 'deed: photo kept', params: {} }, [
      { thing: far, kind: 'photo', within: sculpture, body: { ...body, sha256: 'c'.repeat(64) } },
      { thing: cut, kind: 'photo', within: sculpture, body: { ...body, sha256: 'd'.repeat(64), flaw: 'cut short' } },
    ]),
  );
  const refusedOf = async (name: string, asked: MaskOf) => {
    const { value } = await lookAt(maskOf(desk, name, asked));
    return isRefused(value) ? value.refused.map(({ code }) => code) : [];
  };
  expect(await refusedOf(far, of)).toEqual(['photo not here']);
  expect(await refusedOf(cut, of)).toEqual(['picture cut, not worked']);
  expect(await refusedOf(photo, { ...of, green: [sound, sound, sound] })).toEqual([
    'coverage: green and sound too alike',
  ]);
  expect(await colourAt(desk, far, [0.5, 0.5])).toMatchObject({ ok: false, reason: { code: 'photo not here' } });
});

test('a tap tells the colour of the kept photo there', async () => {
  const { desk, photo } = await withPhoto(4);
  standInCanvas();
  expect(await done(colourAt(desk, photo, [0.5, 0.2]))).toMatchObject({ colour: green });
  expect(await done(colourAt(desk, photo, [0.5, 0.8]))).toMatchObject({ colour: sound });
});

test('a change map is told of photos that lie well on each other, and refused where they do not', async () => {
  const { desk, sculpture, photo: later } = await withPhoto(5);
  const plain = await sharp({ create: { width: 200, height: 100, channels: 3, background: `rgb(${sound.join()})` } })
    .png()
    .toBuffer();
  const { photo: earlier } = await done(keepPhoto(desk, sculpture, new Blob([new Uint8Array(plain)]), 'zone'));
  standInCanvas();
  addresses();
  const corners: [number, number][] = [
    [0.1, 0.1],
    [0.9, 0.1],
    [0.9, 0.9],
    [0.1, 0.9],
  ];
  const size = { width: 200, height: 100 };
  const fitOff = (by: number) => {
    const pairs = corners.map(([x, y], i): Pair => ({ from: [x, y], onto: [i === 0 ? x + by : x, y] }));
    const fit = fitPhotos(pairs, size, size, 'similarity');
    if (isRefused(fit)) throw new Error('no fit');
    return fit;
  };
  const asked: Omit<ChangeMapOf, 'fit'> = { earlier, later, part, samples: { earlier: taps, later: taps }, edge: 0.01 };
  const { value } = await lookAt(changeMapOf(desk, { ...asked, fit: fitOff(0) }));
  if (isRefused(value)) throw new Error(`refused: ${JSON.stringify(value)}`);
  expect(value.newly.value).toBeCloseTo(0.5, 2);
  expect(value.neither).toBeCloseTo(0.5, 2);
  const { value: not } = await lookAt(changeMapOf(desk, { ...asked, fit: fitOff(0.04) }));
  expect(isRefused(not) && not.refused.map(({ code }) => code)).toContain('fit: blink only');
});
