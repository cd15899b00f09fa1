import { afterEach, expect, test } from 'vitest';
import {
  addElevation,
  addStation,
  type Desk,
  deskOn,
  expectPhoto,
  keepPhoto,
  noPhotoExpected,
  photoExpected,
  photoForStation,
  photosOfWork,
  removePhoto,
  setSetting,
  sortPhoto,
  takeMany,
  undoLast,
} from '../../src/actions';
import { type BodyOf, nameOf } from '../../src/engine/record';
import { jpeg, tiff } from '../device/photo/camera';
import { open, surroundings } from '../device/store/around';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

afterEach(() => setSetting('keepPlace', false));

const photo = (name: string, given: Parameters<typeof tiff>[1] = {}): File =>
  new File([jpeg({ exif: tiff(true, given), xmp: name })], `${name}.jpg`, { type: 'image/jpeg' });

const bodyOf = async (desk: Desk, thing: string): Promise<BodyOf<'photo'>> =>
  (await desk.store.current(thing))!.lead.body as unknown as BodyOf<'photo'>;

const withStation = async (seed: number) => {
  const desk = await freshDesk(seed);
  const work = await aWork(desk, { title: 'T', number: '1', areas: [1, 2] });
  const last = await aRound(desk, work, '2025-10-01', ['nothing', 'nothing']);
  const now = await aRound(desk, work, '2026-10-14', ['nothing'], {
    round: { wet: 'damp', washed: 'after wash', ended: undefined },
  });
  const { station } = await done(addStation(desk, work.sculpture, { aim: 'the buckle' }));
  return { desk, ...work, last, now, station };
};

const answerOf = async (desk: Desk, sculpture: string) => {
  const question = photosOfWork(desk, sculpture);
  const leave = question.subscribe(() => undefined);
  await expect.poll(() => question.get()).toBeDefined();
  const answer = question.get()!;
  leave();
  return answer;
};

test('a photo from a station belongs to it and to the round under way, with the surface as that round says', async () => {
  const { desk, sculpture, station, now } = await withStation(1);
  await expectPhoto(desk, { sculpture, station });
  const kept = await done(photoForStation(desk, sculpture, { station }, photo('a'), { light: 'overcast' }));
  expect(await bodyOf(desk, kept.photo)).toMatchObject({
    ...{ role: 'station', station, round: now, wet: 'damp', washed: 'after wash', light: 'overcast' },
  });
  expect(await photoExpected(desk), 'it came').toBeUndefined();
  desk.store.close();
});

test('a photo of last year, brought in today, goes to the round of its day and not to the one under way', async () => {
  const { desk, sculpture, station, last } = await withStation(2);
  const old = await done(photoForStation(desk, sculpture, { station }, photo('a', { taken: '2025:10:01 09:00:00' })));
  expect((await bodyOf(desk, old.photo)).round).toBe(last);
  const between = await done(
    photoForStation(desk, sculpture, { station }, photo('b', { taken: '2026:01:01 09:00:00' })),
  );
  expect((await bodyOf(desk, between.photo)).round, 'nothing is guessed').toBeUndefined();
  desk.store.close();
});

test('a station of another work takes no photo', async () => {
  const { desk, station } = await withStation(3);
  const other = await aWork(desk, { title: 'U', number: '2', areas: [1] });
  const outcome = await photoForStation(desk, other.sculpture, { station }, photo('a'));
  expect(outcome).toMatchObject({ ok: false, reason: { code: 'not here' } });
  desk.store.close();
});

test('many are kept one after the other; the bad one is named and stops none; a stop loses nothing', async () => {
  const { desk, sculpture, now } = await withStation(4);
  const files = [photo('a', { taken: '2026:10:15 09:00:00' }), new File(['hello'], 'b.jpg'), photo('c'), photo('d')];
  const stopper = new AbortController();
  const heard: string[] = [];
  const taken = await takeMany(desk, sculpture, files, {
    heard: ({ done: n, of, name }) => {
      heard.push(`${n}/${of} ${name}`);
      if (name === 'c.jpg') stopper.abort();
    },
    signal: stopper.signal,
  });
  expect(heard).toEqual(['0/4 a.jpg', '1/4 b.jpg', '2/4 c.jpg', '3/4 ']);
  expect(taken.left).toBe(1);
  expect(taken.each.map(({ name, problem }) => [name, problem?.code])).toEqual([
    ['a.jpg', undefined],
    ['b.jpg', 'not a picture'],
    ['c.jpg', undefined],
  ]);
  const { photos } = await answerOf(desk, sculpture);
  expect(photos.map(({ photo: { body } }) => body.role)).toEqual(['other', 'other']);
  expect(photos.filter(({ round }) => round === now)).toHaveLength(1);
  desk.store.close();
});

test('sorting is one undoable deed a touch, empties what is chosen away, and knows its own work only', async () => {
  const { desk, sculpture, station, zones, now } = await withStation(5);
  const { photo: thing } = await done(keepPhoto(desk, sculpture, photo('a'), 'other'));
  await done(sortPhoto(desk, thing, { station }));
  await done(sortPhoto(desk, thing, { round: now, light: 'sun' }));
  expect(await bodyOf(desk, thing)).toMatchObject({ role: 'station', station, round: now, light: 'sun' });
  await done(sortPhoto(desk, thing, { station: undefined, zone: zones[0] }));
  const body = await bodyOf(desk, thing);
  expect(body).toMatchObject({ role: 'zone', zone: zones[0] });
  expect(body.station).toBeUndefined();
  await done(undoLast(desk));
  expect(await bodyOf(desk, thing)).toMatchObject({ role: 'station', station });
  const other = await aWork(desk, { title: 'U', number: '2', areas: [1] });
  expect(await sortPhoto(desk, thing, { zone: other.zones[0] })).toMatchObject({ reason: { code: 'not here' } });
  expect(await sortPhoto(desk, thing, { zone: nameOf.zone('nowhere') })).toMatchObject({
    reason: { code: 'not here' },
  });
  desk.store.close();
});

test('a photo something rests on is not removed; another is, its bytes stay, and undo brings it back', async () => {
  const { desk, sculpture } = await withStation(6);
  const side = await done(addElevation(desk, sculpture, 'west', photo('side')));
  expect(await removePhoto(desk, side.photo)).toMatchObject({ reason: { code: 'photo in use', params: { count: 1 } } });
  const { photo: thing } = await done(keepPhoto(desk, sculpture, photo('a'), 'other'));
  await done(removePhoto(desk, thing));
  expect((await answerOf(desk, sculpture)).photos.map((row) => row.photo.thing)).toEqual([side.photo]);
  const { sha256 } = await bodyOf(desk, side.photo);
  expect(await desk.store.photosHere()).toHaveLength(2);
  expect(await desk.store.photo(sha256)).toBeDefined();
  await done(undoLast(desk));
  expect((await desk.store.current(thing))?.gone).toBe(false);
  desk.store.close();
});

test('the same file once more is the same photo: nothing is kept twice, what is newly known is added', async () => {
  const { desk, sculpture, station } = await withStation(7);
  const first = await done(keepPhoto(desk, sculpture, photo('a'), 'other'));
  const entries = (await desk.store.entriesOf(first.photo)).length;
  const again = await done(keepPhoto(desk, sculpture, photo('a'), 'other'));
  expect(again.photo).toBe(first.photo);
  expect(await desk.store.entriesOf(first.photo)).toHaveLength(entries);
  await done(photoForStation(desk, sculpture, { station }, photo('a')));
  expect(await bodyOf(desk, first.photo)).toMatchObject({ role: 'station', station });
  expect(await desk.store.photosHere()).toHaveLength(1);
  desk.store.close();
});

test('what is expected outlives the page, until it comes or is not wanted', async () => {
  const around = surroundings(8);
  const store = await open('photo-expected', around);
  const clock = { newId: around.newId, now: () => '', today: () => '2026-10-15', surveyor: () => '' };
  const what = { sculpture: nameOf.sculpture('s'), station: nameOf.station('a') };
  await expectPhoto(deskOn(store, clock), what);
  store.close();
  const desk = deskOn(await open('photo-expected', around), clock);
  expect(await photoExpected(desk)).toEqual(what);
  await noPhotoExpected(desk);
  expect(await photoExpected(desk)).toBeUndefined();
  desk.store.close();
});

test('the place is left in where that is set, and blanked where it is not', async () => {
  const { desk, sculpture } = await withStation(9);
  const blanked = await done(keepPhoto(desk, sculpture, photo('a', { gps: true }), 'other'));
  expect(await bodyOf(desk, blanked.photo)).toMatchObject({ gpsBlanked: true });
  expect(blanked.notes.map(({ code }) => code)).toEqual(['location blanked']);
  setSetting('keepPlace', true);
  const left = await done(keepPhoto(desk, sculpture, photo('a', { gps: true }), 'other'));
  expect(left.photo).not.toBe(blanked.photo);
  expect(await bodyOf(desk, left.photo)).toMatchObject({ gpsBlanked: false, placeKept: true });
  desk.store.close();
});
