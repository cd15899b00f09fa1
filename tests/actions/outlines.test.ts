import { expect, test } from 'vitest';
import {
  addElevation,
  changeMapDraft,
  commitChanges,
  type Desk,
  keepOutlineDrawn,
  keepScaleDrawn,
  type MapDraft,
  mapDraft,
  type Question,
  removeElevation,
  removeOutline,
  removeRunOff,
  setElevationScale,
  setElevationStation,
  setObliquity,
  setOutline,
  setRunOff,
  sidesOf,
  undoLast,
  type ZoneMap,
  zoneAt,
  zoneMapOf,
} from '../../src/actions';
import type { Outline, Point } from '../../src/engine/photo';
import { nameOf } from '../../src/engine/record';
import { pictureOf } from '../files/drawnSide';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

const square = (x: number, y: number, edge: number): Outline => [
  [
    [x, y],
    [x + edge, y],
    [x + edge, y + edge],
    [x, y + edge],
  ],
];

/** What a question answers once it has heard of everything that was done before it was asked. */
const answer = async <T>(question: Question<T>): Promise<T> => {
  const leave = question.subscribe(() => undefined);
  await new Promise((resolve) => setTimeout(resolve, 40));
  await expect.poll(() => question.get()).not.toBeUndefined();
  const value = question.get() as T;
  leave();
  return value;
};

const side = async (seed = 1) => {
  const desk = await freshDesk(seed);
  const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1, 2, 3] });
  const { elevation, photo } = await done(
    addElevation(desk, work.sculpture, 'west', pictureOf({ width: 300, height: 400 })),
  );
  const map = (): Promise<ZoneMap> => answer(zoneMapOf(desk, work.sculpture));
  const [a = '', b = '', c = ''] = work.zones;
  return { desk, elevation, photo, map, a, b, c, sculpture: work.sculpture };
};

const tap = (desk: Desk, elevation: string, at: Point) =>
  changeMapDraft(desk, elevation, (draft) =>
    draft?.doing === 'outline' ? { ...draft, corners: [...draft.corners, at] } : draft,
  );

test('corners tapped in haste are all kept, and closing makes one outline of them and forgets the draft', async () => {
  const { desk, elevation, photo, map, a } = await side();
  await done(changeMapDraft(desk, elevation, () => ({ doing: 'outline', zone: a, closed: [], corners: [] })));
  await Promise.all(square(0.1, 0.1, 0.3)[0]!.map((at) => tap(desk, elevation, at)));
  const draft = (await answer(mapDraft(desk, elevation))) as Extract<MapDraft, { doing: 'outline' }>;
  expect(draft.corners).toHaveLength(4);
  expect(await done(keepOutlineDrawn(desk, elevation))).toMatchObject({ zone: a });
  const [west] = (await map()).sides;
  expect(west?.outlines).toHaveLength(1);
  expect(west?.outlines[0]).toMatchObject({ zone: a, outline: square(0.1, 0.1, 0.3) });
  expect(west?.outlines[0]?.thing.body.target.source).toBe(photo);
  expect(west?.size).toEqual({ width: 300, height: 400 });
  expect(await answer(mapDraft(desk, elevation))).toBeNull();
  expect(await keepOutlineDrawn(desk, elevation)).toMatchObject({ ok: false, reason: { code: 'nothing drawn' } });
  desk.store.close();
});

test('rings that are no outline are refused with what is wrong, and nothing is stored', async () => {
  const { desk, elevation, map, a } = await side();
  const refusals: [Outline, string][] = [
    [[], 'outline too few corners'],
    [
      [
        [
          [0.1, 0.1],
          [0.2, 0.2],
        ],
      ],
      'outline too few corners',
    ],
    [
      [
        [
          [0.1, 0.1],
          [0.4, 0.4],
          [0.4, 0.1],
          [0.1, 0.4],
        ],
      ],
      'outline crosses itself',
    ],
    [
      [
        [
          [0.1, 0.1],
          [0.1, 0.1],
          [0.1, 0.1],
        ],
      ],
      'outline too small',
    ],
    [[...square(0.1, 0.1, 0.3), ...square(0.2, 0.2, 0.3)], 'outline pieces overlap'],
    [[...square(0.1, 0.1, 0.5), ...square(0.2, 0.2, 0.1)], 'outline pieces overlap'],
  ];
  for (const [outline, code] of refusals) {
    expect(await setOutline(desk, elevation, a, outline)).toMatchObject({ ok: false, reason: { code } });
  }
  expect((await map()).sides[0]?.outlines).toEqual([]);
  const twoPieces = [...square(0.1, 0.1, 0.3), ...square(0.4, 0.1, 0.2)];
  expect(await setOutline(desk, elevation, a, twoPieces)).toMatchObject({ ok: true });
  desk.store.close();
});

test('an outline drawn again keeps what was said of its folds; taken away and undone it is there as it was', async () => {
  const { desk, elevation, map, a } = await side();
  const { outline } = await done(setOutline(desk, elevation, a, square(0.1, 0.1, 0.3)));
  await done(setObliquity(desk, outline, 1.6));
  await done(setOutline(desk, elevation, a, square(0.2, 0.2, 0.3)));
  const [drawn] = (await map()).sides[0]?.outlines ?? [];
  expect(drawn).toMatchObject({ outline: square(0.2, 0.2, 0.3), thing: { body: { obliquity: 1.6 } } });
  expect(await setObliquity(desk, outline, 4)).toMatchObject({ ok: false, reason: { code: 'value not valid' } });
  await done(removeOutline(desk, outline));
  expect((await map()).sides[0]?.outlines).toEqual([]);
  await done(undoLast(desk));
  expect((await map()).sides[0]?.outlines).toHaveLength(1);
  desk.store.close();
});

test('the smaller of two outlines over one another is the one a touch means', async () => {
  const { desk, elevation, map, a, b } = await side();
  await done(setOutline(desk, elevation, b, square(0.3, 0.3, 0.1)));
  await done(setOutline(desk, elevation, a, square(0.1, 0.1, 0.6)));
  const [west] = (await map()).sides;
  expect(west?.outlines.map(({ zone }) => zone)).toEqual([a, b]);
  expect(west && zoneAt(west, [0.35, 0.35])).toBe(b);
  expect(west && zoneAt(west, [0.15, 0.15])).toBe(a);
  expect(west && zoneAt(west, [0.9, 0.9])).toBeUndefined();
  desk.store.close();
});

test('a scale is two places apart and a length; ends in one place and lengths that are none are refused', async () => {
  const { desk, elevation, map } = await side();
  const put = (draft: MapDraft) => done(changeMapDraft(desk, elevation, () => draft));
  await put({ doing: 'scale', ends: [[0.5, 0.1]] });
  expect(await keepScaleDrawn(desk, elevation, 2)).toMatchObject({ ok: false, reason: { code: 'nothing drawn' } });
  await put({
    doing: 'scale',
    ends: [
      [0.5, 0.1],
      [0.5, 0.9],
    ],
  });
  for (const metres of [0, Number.NaN, 1001]) {
    expect(await keepScaleDrawn(desk, elevation, metres)).toMatchObject({
      ok: false,
      reason: { code: 'length not valid' },
    });
  }
  await done(keepScaleDrawn(desk, elevation, 2.4));
  expect((await map()).sides[0]?.elevation.body.scale).toEqual({ a: [0.5, 0.1], b: [0.5, 0.9], metres: 2.4 });
  expect(await answer(mapDraft(desk, elevation))).toBeNull();
  const near = { a: [0.5, 0.5], b: [0.5, 0.505], metres: 1 } as const;
  expect(await setElevationScale(desk, elevation, { ...near, a: [0.5, 0.5], b: [0.5, 0.505] })).toMatchObject({
    ok: false,
    reason: { code: 'scale ends in one place' },
  });
  await done(setElevationScale(desk, elevation, undefined));
  expect((await map()).sides[0]?.elevation.body.scale).toBeUndefined();
  desk.store.close();
});

test('water runs from one zone to another, once each way, and never to itself', async () => {
  const { desk, map, a, b } = await side();
  const { runOff } = await done(setRunOff(desk, a, b));
  await done(setRunOff(desk, a, b));
  await done(setRunOff(desk, b, a));
  expect((await map()).runOffs.map(({ body }) => [body.fromZone, body.toZone])).toEqual(
    expect.arrayContaining([
      [a, b],
      [b, a],
    ]),
  );
  expect((await map()).runOffs).toHaveLength(2);
  await done(removeRunOff(desk, runOff));
  expect((await map()).runOffs).toHaveLength(1);
  expect(await setRunOff(desk, a, a)).toMatchObject({ ok: false, reason: { code: 'water runs to itself' } });
  desk.store.close();
});

test('photos of the station of a side come with it, the latest first', async () => {
  const { desk, elevation, photo, map, sculpture } = await side();
  const station = nameOf.station('s1');
  const others = ['b', 'c'].map((letter) => nameOf.photo(letter.repeat(64)));
  const [older = '', newer = ''] = others;
  const size = { width: 300, height: 400 };
  const fit = nameOf.photoFit(newer, photo);
  await done(
    commitChanges(desk, { code: 'deed: photo kept', params: {} }, [
      { thing: station, kind: 'station', within: sculpture, body: { sculpture, letter: 'A', aim: 'breast', order: 1 } },
      ...others.map((thing, i) => ({
        thing,
        kind: 'photo' as const,
        within: sculpture,
        body: {
          ...{ sculpture, sha256: thing.slice(6), mime: 'image/jpeg', bytes: 9, ...size, role: 'station' as const },
          ...{ station, taken: `202${3 + i}-05-10T10:00:00` },
        },
      })),
      {
        thing: fit,
        kind: 'photoFit',
        within: sculpture,
        body: {
          ...{ sculpture, photo: newer, onto: photo, kind: 'similarity', size, ontoSize: size },
          pairs: [{ from: [0.1, 0.1], onto: [0.1, 0.1] }],
        },
      },
    ]),
  );
  expect((await map()).sides[0]?.others).toEqual([]);
  await done(setElevationStation(desk, elevation, station));
  const [west] = (await map()).sides;
  expect(west?.station?.thing).toBe(station);
  expect(west?.others.map((other) => [other.photo.thing, other.day])).toEqual([
    [newer, '2024-05-10'],
    [older, '2023-05-10'],
  ]);
  expect((await map()).fits.map(({ thing }) => thing)).toEqual([fit]);
  expect(await setElevationStation(desk, elevation, nameOf.station('nowhere'))).toMatchObject({ ok: false });
  desk.store.close();
});

test('sides stay the same answer while a round goes on beside them, and are another once an outline is drawn', async () => {
  const { desk, elevation, a, sculpture } = await side();
  const sides = () => answer(sidesOf(desk, sculpture));
  const before = await sides();
  await aRound(desk, { sculpture, zones: [a] }, '2026-05-10', ['nothing']);
  expect(await sides()).toBe(before);
  await done(setOutline(desk, elevation, a, square(0.1, 0.1, 0.3)));
  expect((await sides())[0]?.outlines).toHaveLength(1);
  desk.store.close();
});

test('a side that is taken away takes its outlines with it, and undo brings both back', async () => {
  const { desk, elevation, map, a } = await side();
  const { outline } = await done(setOutline(desk, elevation, a, square(0.1, 0.1, 0.3)));
  await done(removeElevation(desk, elevation));
  expect((await desk.store.current(outline))?.gone).toBe(true);
  await done(undoLast(desk));
  expect((await map()).sides[0]?.outlines).toHaveLength(1);
  desk.store.close();
});
