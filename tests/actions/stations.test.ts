import sharp from 'sharp';
import { expect, test } from 'vitest';
import {
  addSentinel,
  addStation,
  addStations,
  cardsToPrint,
  commitChanges,
  type Desk,
  editSentinel,
  editStation,
  expectShot,
  lightNow,
  orderStations,
  photoExpected,
  photoForShot,
  type Question,
  removeSentinel,
  removeStation,
  type ShotList,
  sayLight,
  shotList,
  undoLast,
} from '../../src/actions';
import { type BodyOf, nameOf, type Thing } from '../../src/engine/record';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

/** What a question comes to; `is` tells the answer waited for from the one that stood before. */
const answered = async <T>(question: Question<T>, is: (value: T) => boolean = () => true): Promise<T> => {
  const leave = question.subscribe(() => undefined);
  await expect.poll(() => question.get() !== undefined && is(question.get() as T)).toBe(true);
  const value = question.get() as T;
  leave();
  return value;
};

const within = async (desk: Desk, kind: 'station' | 'sentinel', sculpture: string) =>
  (await desk.store.within(sculpture, [kind])).map(({ lead }) => lead.body);

const lettersOf = async (desk: Desk, sculpture: string): Promise<readonly unknown[]> =>
  (await within(desk, 'station', sculpture)).sort((a, b) => Number(a.order) - Number(b.order)).map((b) => b.letter);

const bodyOf = async (desk: Desk, station: string): Promise<Thing<'station'>['body']> =>
  (await desk.store.current(station))?.lead.body as BodyOf<'station'>;

/** A photo of one colour; each grey is another file. */
const jpeg = async (grey: number): Promise<Blob> => {
  const background = { r: grey, g: grey, b: grey };
  const bytes = await sharp({ create: { width: 32, height: 24, channels: 3, background } })
    .jpeg()
    .toBuffer();
  return new Blob([new Uint8Array(bytes)], { type: 'image/jpeg' });
};

let photos = 0;

/** A photo as the record speaks of it; its bytes matter to no list. */
const aPhoto = async (
  desk: Desk,
  sculpture: string,
  facts: Partial<BodyOf<'photo'>> & Pick<BodyOf<'photo'>, 'role'>,
): Promise<string> => {
  photos += 1;
  const sha256 = photos.toString(16).padStart(64, '0');
  const thing = nameOf.photo(sha256);
  const body = { sculpture, sha256, mime: 'image/jpeg', bytes: 1, ...facts };
  await done(
    commitChanges(desk, { code: 'deed: photo kept', params: {} }, [{ thing, kind: 'photo', within: sculpture, body }]),
  );
  return thing;
};

const listOf = async (desk: Desk, sculpture: string, of: { round?: string; in?: string } = {}): Promise<ShotList> => {
  const list = await answered(
    shotList(desk, sculpture, of.round),
    (l) => of.in === undefined || l?.round?.thing === of.in,
  );
  if (!list) throw new Error('no shot list');
  return list;
};

test('stations get the next letter and the last place in the walk, and four can be set in one deed that one undo takes back', async () => {
  const desk = await freshDesk(1);
  const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  const sides = ['north', 'east', 'south', 'west'].map((side, i) => ({ aim: `from ${side}`, bearing: i * 90 }));
  await done(addStations(desk, sculpture, sides));
  expect(await done(addStation(desk, sculpture, { aim: '  the beak ', distance: 4 }))).toMatchObject({ letter: 'E' });
  expect(await lettersOf(desk, sculpture)).toEqual(['A', 'B', 'C', 'D', 'E']);
  await done(undoLast(desk));
  await done(undoLast(desk));
  expect(await lettersOf(desk, sculpture)).toEqual([]);
  desk.store.close();
});

test('a station that cannot be is refused with a sentence, and nothing is stored', async () => {
  const desk = await freshDesk(2);
  const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  const code = async (fields: Parameters<typeof addStation>[2]) => {
    const outcome = await addStation(desk, sculpture, fields);
    return outcome.ok ? 'ok' : outcome.reason.code;
  };
  expect(await code({ aim: ' ' })).toBe('aim missing');
  expect(await code({ aim: 'beak', bearing: 361 })).toBe('station not possible');
  expect(await code({ aim: 'beak', distance: 0 })).toBe('station not possible');
  expect(await code({ aim: 'beak', lens: Number.NaN })).toBe('station not possible');
  expect(await lettersOf(desk, sculpture)).toEqual([]);
  expect(await code({ aim: 'beak', bearing: 360, height: 0, distance: 1000 })).toBe('ok');
  desk.store.close();
});

test('an edit keeps what it does not name, empties what is given as undefined, and takes no letter of another station', async () => {
  const desk = await freshDesk(3);
  const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  const { station } = await done(addStation(desk, sculpture, { aim: 'beak', distance: 4, mark: 'brass stud' }));
  await done(addStation(desk, sculpture, { aim: 'tail' }));
  await done(editStation(desk, station, { mark: undefined, light: 'open shade', letter: 'n' }));
  const body = await bodyOf(desk, station);
  expect(body).toMatchObject({ aim: 'beak', distance: 4, light: 'open shade', letter: 'N' });
  expect(body.mark).toBeUndefined();
  expect(await editStation(desk, station, { letter: 'b' })).toMatchObject({
    ok: false,
    reason: { code: 'station letter taken' },
  });
  desk.store.close();
});

test('a letter that stands on the card in a photo is not given to another spot; one that left no photo is free again', async () => {
  const desk = await freshDesk(4);
  const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  const { station: a } = await done(addStation(desk, sculpture, { aim: 'beak' }));
  const { station: b } = await done(addStation(desk, sculpture, { aim: 'tail' }));
  await aPhoto(desk, sculpture, { role: 'station', station: a });
  await done(removeStation(desk, a));
  await done(removeStation(desk, b));
  expect(await done(addStation(desk, sculpture, { aim: 'wing' }))).toMatchObject({ letter: 'B' });
  expect(await addStation(desk, sculpture, { aim: 'foot', letter: 'A' })).toMatchObject({ ok: false });
  desk.store.close();
});

test('stations are walked in the order given, and an order that forgets one is refused', async () => {
  const desk = await freshDesk(5);
  const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  const { stations } = await done(addStations(desk, sculpture, [{ aim: 'a' }, { aim: 'b' }, { aim: 'c' }]));
  const [a = '', b = '', c = ''] = stations.map(({ station }) => station);
  await done(orderStations(desk, sculpture, [c, a, b]));
  expect(await lettersOf(desk, sculpture)).toEqual(['C', 'A', 'B']);
  expect(await orderStations(desk, sculpture, [c, a])).toMatchObject({ ok: false });
  expect(await orderStations(desk, sculpture, [c, a, a])).toMatchObject({ ok: false });
  desk.store.close();
});

test('a sentinel square lies in a zone of its own work, says how it is found, and keeps its zone when edited', async () => {
  const desk = await freshDesk(6);
  const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1, 2] });
  const other = await aWork(desk, { title: 'Bather', number: '2', areas: [1] });
  const [zone = '', second = ''] = work.zones;
  const [elsewhere = ''] = other.zones;
  expect(await addSentinel(desk, work.sculpture, { zone: elsewhere, which: 'best', find: 'x' })).toMatchObject({
    ok: false,
  });
  expect(await addSentinel(desk, work.sculpture, { zone, which: 'best', find: ' ' })).toMatchObject({
    ok: false,
    reason: { code: 'find missing' },
  });
  const { sentinel } = await done(addSentinel(desk, work.sculpture, { zone, which: 'worst', find: 'under the seam' }));
  await done(editSentinel(desk, sentinel, { find: 'a hand under the seam' }));
  const [kept] = await within(desk, 'sentinel', work.sculpture);
  expect(kept).toMatchObject({ zone, which: 'worst', find: 'a hand under the seam', since: '2026-10-15' });
  await done(addSentinel(desk, work.sculpture, { zone: second, which: 'best', find: 'lee side' }));
  await done(removeSentinel(desk, sentinel));
  expect((await within(desk, 'sentinel', work.sculpture)).map(({ which }) => which)).toEqual(['best']);
  desk.store.close();
});

test('the shot list asks for each station, square and zone, and ticks what the round has a photo of', async () => {
  const desk = await freshDesk(7);
  const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1, 2] });
  const { sculpture } = work;
  const [zoneA = '', zoneB = ''] = work.zones;
  const { stations } = await done(addStations(desk, sculpture, [{ aim: 'beak' }, { aim: 'tail' }]));
  const [a = '', b = ''] = stations.map(({ station }) => station);
  const { sentinel: worst } = await done(addSentinel(desk, sculpture, { zone: zoneB, which: 'worst', find: 'x' }));
  const { sentinel: best } = await done(addSentinel(desk, sculpture, { zone: zoneA, which: 'best', find: 'y' }));
  const earlier = await aRound(desk, work, '2025-05-12', ['nothing', 'nothing']);
  const old = await aPhoto(desk, sculpture, { role: 'station', station: a, round: earlier });
  expect((await listOf(desk, sculpture)).round?.thing).toBe(earlier);

  const now = await aRound(desk, work, '2026-05-12', ['nothing'], { round: { ended: undefined } });
  const fromA = await aPhoto(desk, sculpture, { role: 'station', station: a, round: now });
  const ofBest = await aPhoto(desk, sculpture, { role: 'sentinel', sentinel: best, zone: zoneA, round: now });
  // A detail of a finding in zone B is not zone B as a whole.
  await aPhoto(desk, sculpture, { role: 'finding', zone: zoneB, round: now });
  const list = await listOf(desk, sculpture, { in: now });
  expect(list.shots.map(({ thing }) => thing)).toEqual([a, b, best, worst, zoneA, zoneB]);
  expect(list.shots.map((shot) => shot.photos.map(({ thing }) => thing))).toEqual([[fromA], [], [ofBest], [], [], []]);
  expect(list.shots[0]?.before?.thing).toBe(old);

  const past = await listOf(desk, sculpture, { round: earlier });
  expect(past.shots.filter(({ photos }) => photos.length > 0).map(({ thing }) => thing)).toEqual([a]);
  // What came after is nothing to stand by.
  expect(past.shots[0]?.before).toBeUndefined();
  desk.store.close();
});

test('a photo kept with the visit of a zone ticks the zone, and one of a round said to be one with another counts in it', async () => {
  const desk = await freshDesk(8);
  const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  const { sculpture } = work;
  const [zone = ''] = work.zones;
  const { station } = await done(addStation(desk, sculpture, { aim: 'beak' }));
  const main = await aRound(desk, work, '2026-05-12', ['nothing']);
  const part = await aRound(desk, work, '2026-05-12', [], { round: { partOf: main } });
  const ofVisit = await aPhoto(desk, sculpture, { role: 'zone' });
  await done(
    commitChanges(desk, { code: 'deed: photo kept', params: {} }, [
      { thing: nameOf.visit(main, zone), patch: { photos: [ofVisit] } },
    ]),
  );
  const fromPart = await aPhoto(desk, sculpture, { role: 'station', station, round: part });
  const list = await listOf(desk, sculpture);
  expect(list.rounds).toHaveLength(1);
  expect(list.shots.map(({ photos }) => photos.map(({ thing }) => thing))).toEqual([[fromPart], [ofVisit]]);
  expect((await listOf(desk, sculpture, { round: part })).round?.thing).toBe(main);
  desk.store.close();
});

test('a work without rounds has a list with nothing ticked; a work that is not here has none', async () => {
  const desk = await freshDesk(9);
  const { sculpture } = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  const { station } = await done(addStation(desk, sculpture, { aim: 'beak' }));
  const before = await aPhoto(desk, sculpture, { role: 'station', station });
  const list = await listOf(desk, sculpture);
  expect(list.round).toBeNull();
  expect(list.shots[0]).toMatchObject({ thing: station, photos: [], before: { thing: before } });
  expect(await answered(shotList(desk, 'sculpture/none'))).toBeNull();
  desk.store.close();
});

test('a photo of a shot goes where the shot belongs, with the round’s surface and the light said, and is no longer expected', async () => {
  const desk = await freshDesk(10);
  const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  const { sculpture } = work;
  const [zone = ''] = work.zones;
  const { station } = await done(addStation(desk, sculpture, { aim: 'beak' }));
  const { sentinel } = await done(addSentinel(desk, sculpture, { zone, which: 'worst', find: 'seam' }));
  const round = nameOf.round(desk.newId());
  const body: BodyOf<'round'> = {
    ...{ sculpture, type: 'annual', date: '2026-10-15', wet: 'damp', washed: 'after wash', ownEye: true, surveyor: '' },
  };
  await done(
    commitChanges(desk, { code: 'deed: round started', params: { type: 'annual', date: body.date } }, [
      { thing: round, kind: 'round', within: sculpture, body },
    ]),
  );
  const list = await listOf(desk, sculpture, { in: round });
  const place = { sculpture, round: list.round };
  const belongs = [
    { of: 'station', thing: station, facts: { role: 'station', station } },
    { of: 'sentinel', thing: sentinel, facts: { role: 'sentinel', sentinel, zone } },
    { of: 'zone', thing: zone, facts: { role: 'zone', zone } },
  ] as const;
  for (const [i, { of, thing, facts }] of belongs.entries()) {
    await done(expectShot(desk, place, { of, thing }));
    expect(await photoExpected(desk)).toMatchObject({ sculpture, [of]: thing, round });
    const { photo } = await done(photoForShot(desk, place, { of, thing }, await jpeg(60 + 60 * i), 'overcast'));
    expect((await desk.store.current(photo))?.lead.body).toMatchObject({
      ...{ ...facts, round, light: 'overcast', wet: 'damp', washed: 'after wash' },
    });
    expect(await photoExpected(desk)).toBeUndefined();
  }
  desk.store.close();
});

test('the light said stays for the day and is asked again on another', async () => {
  const desk = await freshDesk(11);
  expect(await lightNow(desk)).toBeUndefined();
  await sayLight(desk, 'overcast');
  expect(await lightNow(desk)).toBe('overcast');
  expect(await lightNow({ ...desk, today: () => '2026-10-16' })).toBeUndefined();
  desk.store.close();
});

test('cards are for works with a station or a square, by number as a person counts', async () => {
  const desk = await freshDesk(12);
  const works = [];
  for (const number of ['10', '9', '3']) works.push(await aWork(desk, { title: `work ${number}`, number, areas: [1] }));
  const [ten, nine] = works;
  if (!ten || !nine) throw new Error('no works');
  await done(addStation(desk, ten.sculpture, { aim: 'beak' }));
  await done(addSentinel(desk, nine.sculpture, { zone: nine.zones[0] ?? '', which: 'worst', find: 'seam' }));
  await done(addSentinel(desk, nine.sculpture, { zone: nine.zones[0] ?? '', which: 'best', find: 'rim' }));
  const cards = await answered(cardsToPrint(desk));
  expect(cards.map(({ sculpture }) => sculpture.body.number)).toEqual(['9', '10']);
  expect(cards[0]?.sentinels.map(({ body }) => body.which)).toEqual(['best', 'worst']);
  expect(cards[0]?.letters.get(nine.zones[0] ?? '')).toBe('A');
  desk.store.close();
});
