import { expect, test } from 'vitest';
import {
  commitChanges,
  type Desk,
  deskOn,
  judgeDot,
  keepMeasure,
  keepTouches,
  layCheckDots,
  layDots,
  type MeasureAtHand,
  type MeasureOf,
  type Measuring,
  measureAtHand,
  measuresOf,
  measuringOf,
  type Question,
  removeMeasure,
  setMeasuringPlace,
  takeBackDot,
  undoLast,
} from '../../src/actions';
import { type Outline, wilson, writeSelector } from '../../src/engine/photo';
import { nameOf } from '../../src/engine/record';
import { freshName, open, surroundings } from '../device/store/around';
import { aRound, aWork, done, freshDesk, type Work } from '../screens/deskwork';

const answered = async <T>(question: Question<T>, is: (value: T) => boolean = () => true): Promise<T> => {
  const leave = question.subscribe(() => undefined);
  await expect.poll(() => question.get() !== undefined && is(question.get() as T)).toBe(true);
  const value = question.get() as T;
  leave();
  return value;
};

/** A square of a tenth of each side, at a corner. */
const square = (x: number, y: number, side = 0.1): Outline => [
  [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ],
];

const part = square(0.2, 0.2, 0.5);
const green = 'even-green-film';

interface Garden {
  readonly desk: Desk;
  readonly work: Work;
  readonly round: string;
  readonly photo: string;
  readonly zone: string;
}

/** A work with a round that saw a fifth of zone A green, and a photo of it. */
const garden = async (seed: number, size: object = { width: 2000, height: 1500 }): Promise<Garden> => {
  const desk = await freshDesk(seed);
  const work = await aWork(desk, { title: 'One', number: '1', areas: [2, 3] });
  const { sculpture } = work;
  const round = await aRound(desk, work, '2026-05-12', [{ [green]: 0.2 }, 'nothing']);
  const photo = nameOf.photo('a'.repeat(64));
  const body = { sculpture, sha256: 'a'.repeat(64), mime: 'image/jpeg', bytes: 9, role: 'zone' as const, ...size };
  await done(
    commitChanges(desk, { code: 'deed: photo kept', params: {} }, [
      { thing: photo, kind: 'photo', within: sculpture, body: { ...body, zone: work.zones[0] ?? '', round } },
    ]),
  );
  return { desk, work, round, photo, zone: work.zones[0] ?? '' };
};

const by = ({ photo, zone }: Garden, way: MeasureOf['way']): MeasureOf => ({ photo, about: zone, kind: green, way });

const atHand = (desk: Desk, of: MeasureOf, is?: (at: MeasureAtHand) => boolean) =>
  answered(measureAtHand(desk, of), is);
const measured = async (desk: Desk) => (await desk.store.ofKind('measure')).filter(({ gone }) => !gone);
const answersNow = async (desk: Desk, of: MeasureOf) => (await atHand(desk, of)).draft?.working.answers;

const judgeAll = async (desk: Desk, of: MeasureOf, dots: number, green: number) => {
  let kept: string | undefined;
  for (let i = 0; i < dots; i++) ({ kept } = await done(judgeDot(desk, of, 'answers', i, i < green ? 'y' : 'n')));
  return kept;
};

test('forty-nine dots make one figure in one deed, with the Wilson interval, and the eye’s figure stays as it was', async () => {
  const g = await garden(1);
  const of = by(g, 'dots');
  const before = await g.desk.store.ofKind('finding');
  await done(layDots(g.desk, of, part, 49));
  expect(await measured(g.desk)).toHaveLength(0);
  const kept = await judgeAll(g.desk, of, 49, 10);
  expect(kept).toBe(nameOf.measure(g.photo, g.zone, green, 'dots'));
  const [figure] = await measured(g.desk);
  const [low, high] = wilson(10, 49, 0.9);
  expect(figure?.lead.body).toMatchObject({
    about: g.zone,
    kind: green,
    round: g.round,
    date: '2026-10-15',
    coverage: { value: 10 / 49, low, high, method: 'dots' },
    working: { dots: 49, answers: 'y'.repeat(10) + 'n'.repeat(39) },
  });
  expect(await g.desk.store.ofKind('finding')).toEqual(before);
});

test('the three ways stand beside each other, none in the place of another', async () => {
  const g = await garden(2);
  await done(layDots(g.desk, by(g, 'dots'), part, 49));
  await judgeAll(g.desk, by(g, 'dots'), 49, 5);
  const patches = { type: 'SvgSelector' as const, value: writeSelector(square(0.3, 0.3, 0.2)) };
  await done(keepTouches(g.desk, by(g, 'traced'), { part, working: { patches }, corners: [] }));
  await done(keepMeasure(g.desk, by(g, 'traced')));
  await done(keepTouches(g.desk, by(g, 'photo'), { part, working: { green: [], sound: [] }, corners: [] }));
  await done(layCheckDots(g.desk, by(g, 'photo'), { maskShare: 0.25, inMask: 8, outsideMask: 22 }));
  for (let i = 0; i < 22; i++) await done(judgeDot(g.desk, by(g, 'photo'), 'outsideMask', i, 'n'));
  expect(await measured(g.desk)).toHaveLength(2);
  for (let i = 0; i < 8; i++) await done(judgeDot(g.desk, by(g, 'photo'), 'inMask', i, 'y'));
  const told = await answered(measuresOf(g.desk, g.work.sculpture), (all) => all.length === 3);
  expect(told.map(({ measure }) => measure.body.coverage.method).sort()).toEqual(['dots', 'photo', 'traced']);
  expect(told.map(({ zone, photo }) => [zone, photo?.thing])).toEqual(Array(3).fill([g.zone, g.photo]));
  const value = (way: string) =>
    told.find(({ measure }) => measure.body.coverage.method === way)?.measure.body.coverage.value;
  expect(value('traced')).toBeCloseTo(0.16, 6);
  expect(value('photo')).toBeCloseTo(0.25, 6);
});

test('each dot outlives the tab: killed after seventeen, it goes on at the eighteenth', async () => {
  const name = freshName();
  const around = surroundings(3);
  const options = {
    newId: around.newId,
    now: () => '2026-10-15T10:00:00.000+00:00',
    today: () => '2026-10-15',
    surveyor: () => '',
  };
  const first = await open(name, around);
  const desk = deskOn(first, options);
  const of: MeasureOf = { photo: nameOf.photo('a'.repeat(64)), about: 'zone/1', kind: green, way: 'dots' };
  await done(layDots(desk, of, part, 49));
  const seed = (await atHand(desk, of)).draft?.working.seed;
  for (let i = 0; i < 17; i++) await done(judgeDot(desk, of, 'answers', i, 'n'));
  first.close();
  const again = deskOn(await open(name, around), options);
  const { draft } = await atHand(again, of);
  expect(draft?.working.answers).toBe('n'.repeat(17) + '-'.repeat(32));
  expect(draft?.working.seed).toBe(seed);
  expect(draft?.part).toEqual(part);
});

test('a dot is taken back to be judged again, and the figure that stands is said anew only when all are judged', async () => {
  const g = await garden(4);
  const of = by(g, 'dots');
  await done(layDots(g.desk, of, part, 49));
  await judgeAll(g.desk, of, 49, 10);
  await done(takeBackDot(g.desk, of, 'answers', 48));
  const back = await atHand(g.desk, of, (at) => at.differs);
  expect(back.draft?.working.answers?.at(-1)).toBe('-');
  expect(back.measure?.body.coverage.value).toBeCloseTo(10 / 49);
  await done(judgeDot(g.desk, of, 'answers', 48, 'y'));
  const [figure] = await measured(g.desk);
  expect(figure?.lead.body.coverage).toMatchObject({ value: 11 / 49 });
  expect(await takeBackDot(g.desk, of, 'answers', 99)).toMatchObject({
    ok: false,
    reason: { code: 'nothing to undo' },
  });
});

test('Undo after the last dot takes the figure back and leaves every dot judged', async () => {
  const g = await garden(5);
  const of = by(g, 'dots');
  await done(layDots(g.desk, of, part, 49));
  await judgeAll(g.desk, of, 49, 10);
  await done(undoLast(g.desk));
  expect(await measured(g.desk)).toHaveLength(0);
  expect(await answersNow(g.desk, of)).toBe('y'.repeat(10) + 'n'.repeat(39));
  await done(keepMeasure(g.desk, of));
  expect(await measured(g.desk)).toHaveLength(1);
});

test('a figure that is removed is gone with its dots, and Undo brings both back', async () => {
  const g = await garden(6);
  const of = by(g, 'dots');
  await done(layDots(g.desk, of, part, 49));
  const kept = await judgeAll(g.desk, of, 49, 10);
  await done(removeMeasure(g.desk, kept ?? ''));
  expect(await atHand(g.desk, of, (at) => at.measure === null)).toMatchObject({ draft: null });
  await done(undoLast(g.desk));
  const back = await atHand(g.desk, of, (at) => at.measure !== null);
  expect(back.draft?.working.answers).toHaveLength(49);
});

test('two dots judged in the same moment are both kept', async () => {
  const g = await garden(7);
  const of = by(g, 'dots');
  await done(layDots(g.desk, of, part, 49));
  await Promise.all([0, 1, 2, 3].map((i) => done(judgeDot(g.desk, of, 'answers', i, i % 2 ? 'g' : 'y'))));
  expect((await answersNow(g.desk, of))?.slice(0, 5)).toBe('ygyg-');
});

test('what another tablet measured since is not hidden by touches made here before', async () => {
  const g = await garden(14);
  const of = by(g, 'dots');
  await done(layDots(g.desk, of, part, 49));
  const kept = await judgeAll(g.desk, of, 49, 10);
  const [mine] = await measured(g.desk);
  const body = mine?.lead.body as never as { working: object };
  const theirs = { ...body, working: { ...body.working, answers: 'g'.repeat(4) + 'n'.repeat(45) } };
  await done(takeBackDot(g.desk, of, 'answers', 48));
  await done(
    commitChanges(g.desk, { code: 'deed: coverage measured', params: { way: 'dots', kind: green } }, [
      { thing: kept ?? '', kind: 'measure', within: g.work.sculpture, body: theirs as never },
    ]),
  );
  expect(await answersNow(g.desk, of)).toBe('g'.repeat(4) + 'n'.repeat(45));
});

test('dots that all lie in glare make no figure, and stay to be judged again', async () => {
  const g = await garden(8);
  const of = by(g, 'dots');
  await done(layDots(g.desk, of, part, 49));
  for (let i = 0; i < 49; i++) await done(judgeDot(g.desk, of, 'answers', i, 'g'));
  expect(await measured(g.desk)).toHaveLength(0);
  expect(await answersNow(g.desk, of)).toBe('g'.repeat(49));
  expect(await keepMeasure(g.desk, of)).toMatchObject({ ok: false, reason: { code: 'coverage: too much glare' } });
});

test('nothing is kept of a photo whose size is not known, nor before anything was touched', async () => {
  const g = await garden(9, {});
  expect(await keepMeasure(g.desk, by(g, 'traced'))).toMatchObject({ ok: false, reason: { code: 'nothing measured' } });
  await done(keepTouches(g.desk, by(g, 'traced'), { part, working: {}, corners: [] }));
  expect(await keepMeasure(g.desk, by(g, 'traced'))).toMatchObject({
    ok: false,
    reason: { code: 'photo size not known' },
  });
  expect(await judgeDot(g.desk, by(g, 'dots'), 'answers', 0, 'y')).toMatchObject({
    ok: false,
    reason: { code: 'no dots laid' },
  });
});

const view = (g: Garden, is?: (m: Measuring | null) => boolean, about = g.zone) =>
  answered(measuringOf(g.desk, g.photo, about), is);

test('the part of the photo is the zone’s outline on the map, until it is drawn here', async () => {
  const g = await garden(10);
  expect((await view(g))?.part).toBeNull();
  const { sculpture } = g.work;
  const elevation = nameOf.elevation('e1');
  const selector = { type: 'SvgSelector' as const, value: writeSelector(part) };
  await done(
    commitChanges(g.desk, { code: 'deed: elevation added', params: { side: 'west' } }, [
      {
        thing: elevation,
        kind: 'elevation',
        within: sculpture,
        body: { sculpture, side: 'west', photo: g.photo, order: 1 },
      },
      {
        thing: nameOf.outline(elevation, g.zone),
        kind: 'outline',
        within: sculpture,
        body: { sculpture, elevation, zone: g.zone, target: { source: g.photo, selector } },
      },
    ]),
  );
  expect((await view(g, (m) => m?.part?.from === 'outline'))?.part?.outline).toEqual(part);
  const drawn = square(0.1, 0.1, 0.3);
  await done(setMeasuringPlace(g.desk, g.photo, g.zone, { drawn: { rings: drawn, corners: [] } }));
  expect((await view(g, (m) => m?.part?.from === 'drawn'))?.part?.outline).toEqual(drawn);
});

test('a photo that was laid on the map’s photo takes the outline over, and one that does not fit does not', async () => {
  const g = await garden(15);
  const { sculpture } = g.work;
  const elevation = nameOf.elevation('e1');
  const mapped = nameOf.photo('b'.repeat(64));
  const size = { width: 2000, height: 1500 };
  const selector = { type: 'SvgSelector' as const, value: writeSelector(part) };
  const pairsBy = (dx: number, off: number) =>
    (
      [
        [0.2, 0.2],
        [0.8, 0.25],
        [0.75, 0.8],
        [0.25, 0.7],
        [0.5, 0.5],
      ] as const
    ).map(([x, y], i) => ({
      from: [x + dx, y + (i % 2 ? off : -off)] as [number, number],
      onto: [x, y] as [number, number],
    }));
  const laidBy = (pairs: ReturnType<typeof pairsBy>) => ({
    thing: nameOf.photoFit(g.photo, mapped),
    kind: 'photoFit' as const,
    within: sculpture,
    body: { sculpture, photo: g.photo, onto: mapped, kind: 'similarity' as const, size, ontoSize: size, pairs },
  });
  await done(
    commitChanges(g.desk, { code: 'deed: elevation added', params: { side: 'west' } }, [
      {
        thing: elevation,
        kind: 'elevation',
        within: sculpture,
        body: { sculpture, side: 'west', photo: mapped, order: 1 },
      },
      {
        thing: nameOf.outline(elevation, g.zone),
        kind: 'outline',
        within: sculpture,
        body: { sculpture, elevation, zone: g.zone, target: { source: mapped, selector } },
      },
      laidBy(pairsBy(0.05, 0)),
    ]),
  );
  const laid = (await view(g, (m) => m?.part?.from === 'laid on'))?.part?.outline[0]?.[0];
  expect(laid?.[0]).toBeCloseTo(0.25, 4);
  expect(laid?.[1]).toBeCloseTo(0.2, 4);
  await done(commitChanges(g.desk, { code: 'deed: photo kept', params: {} }, [laidBy(pairsBy(0.05, 0.15))]));
  await view(g, (m) => m?.part === null);
});

test('the eye’s figure is that of the photo’s own round, and the kinds found here are offered first', async () => {
  const g = await garden(11);
  await aRound(g.desk, g.work, '2026-09-01', [{ 'green-spots': 0.03 }, 'nothing']);
  const seen = await view(g);
  expect(seen?.round?.thing).toBe(g.round);
  expect(seen?.byEye.map(({ body }) => [body.kind, body.coverage?.value])).toEqual([[green, 0.2]]);
  expect(seen?.kinds).toEqual([green, 'green-spots']);
});

test('a sentinel square is measured in its own frame, not in the outline of its zone', async () => {
  const g = await garden(12);
  const { sculpture } = g.work;
  const sentinel = nameOf.sentinel('s1');
  await done(
    commitChanges(g.desk, { code: 'deed: photo kept', params: {} }, [
      {
        thing: sentinel,
        kind: 'sentinel',
        within: sculpture,
        body: { sculpture, zone: g.zone, which: 'worst', find: 'left of the seam', since: '2026-05-01' },
      },
    ]),
  );
  const seen = await view(g, (m) => m !== null, sentinel);
  expect(seen?.sentinel?.thing).toBe(sentinel);
  expect(seen?.zone.thing).toBe(g.zone);
  expect(seen?.part).toBeNull();
});

test('a photo of another work is not measured for this one’s zone', async () => {
  const g = await garden(13);
  const other = await aWork(g.desk, { title: 'Two', number: '2', areas: [1] });
  expect(await view(g, undefined, other.zones[0])).toBeNull();
});

test('corners tapped faster than a screen can tell of them are all kept, in their order', async () => {
  const g = await garden(16);
  const of = by(g, 'traced');
  const tap = (x: number) =>
    done(
      keepTouches(g.desk, of, (before) => ({
        part,
        working: {},
        corners: [...(before?.corners ?? []), [x, 0.5]],
      })),
    );
  await Promise.all([0.1, 0.2, 0.3, 0.4].map(tap));
  const { draft } = await atHand(g.desk, of, (at) => at.draft?.corners.length === 4);
  expect(draft?.corners.map(([x]) => x)).toEqual([0.1, 0.2, 0.3, 0.4]);
});
