import { afterEach, expect, test } from 'vitest';
import {
  addElevation,
  type BagSeen,
  type Desk,
  freeableWorks,
  freePhotos,
  keepPhoto,
  photoAway,
  photosInBag,
  type Question,
  storageHealth,
} from '../../src/actions';
import { idPart } from '../../src/engine/record';
import { jpeg, tiff } from '../device/photo/camera';
import { asZipped, bagged, payloadOf } from '../files/bags';
import { zipOf } from '../files/zipped';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

const desks: Desk[] = [];
afterEach(() => {
  for (const { store } of desks.splice(0)) store.close();
});

const answer = async <T>(desk: Desk, asking: (desk: Desk) => Question<T>): Promise<T> => {
  // On a store nobody has asked yet, so that no earlier answer stands.
  const question = asking({ ...desk, store: Object.create(desk.store) as Desk['store'] });
  const leave = question.subscribe(() => undefined);
  await expect.poll(() => question.get()).not.toBeUndefined();
  const got = question.get();
  leave();
  return got as T;
};

const picture = (name: string): File =>
  new File([jpeg({ exif: tiff(true, {}), xmp: name })], `${name}.jpg`, { type: 'image/jpeg' });

/** A work with a round last year and one this year, a photo in each, one taken in neither, and the picture of a side. */
const withPhotos = async (seed: number) => {
  const desk = await freshDesk(seed);
  desks.push(desk);
  const work = await aWork(desk, { title: 'Grey heron', number: '2', areas: [1] });
  const last = await aRound(desk, work, '2025-10-01', ['nothing']);
  const now = await aRound(desk, work, '2026-10-01', ['nothing']);
  const keep = async (name: string, facts: Parameters<typeof keepPhoto>[4]) =>
    idPart((await done(keepPhoto(desk, work.sculpture, picture(name), 'other', facts))).photo);
  const old = await keep('old', { round: last });
  const fresh = await keep('fresh', { round: now });
  const between = await keep('between', { taken: '2026-03-01' });
  await done(addElevation(desk, work.sculpture, 'west', picture('side')));
  const side = (await desk.store.photosHere()).find((name) => ![old, fresh, between].includes(name))!;
  return { desk, ...work, old, fresh, between, side };
};

const bagOf = (photos: readonly string[]): BagSeen => ({ name: 'last.survey.zip', day: '2026-10-14', photos });

test('photos of earlier rounds can go, those of the last round only when asked for, and the picture of a side stays', async () => {
  const { desk, old, fresh, between, side } = await withPhotos(1);
  const [work] = await answer(desk, freeableWorks);
  expect(work).toMatchObject({ number: '2', title: 'Grey heron' });
  expect([...work!.older.photos].sort()).toEqual([old, between].sort());
  expect([...work!.all.photos].sort()).toEqual([old, fresh, between].sort());
  expect(work!.all.photos).not.toContain(side);
  const bytes = await Promise.all(
    work!.all.photos.map(async (name) => (await desk.store.photo(name))!.bytes.byteLength),
  );
  expect(work!.all.bytes).toBe(bytes.reduce((sum, one) => sum + one, 0));
});

test('only what the bag holds whole leaves the device, with the note where it lies; the rest and every thumbnail stay', async () => {
  const { desk, old, fresh, between, side } = await withPhotos(2);
  const before = await desk.store.held();
  const size = (await desk.store.photo(old))!.bytes.byteLength;
  const entries = await desk.store.allEntries();
  const freed = await done(freePhotos(desk, [old, between], bagOf([old, fresh, 'f'.repeat(64)])));
  expect(freed).toMatchObject({ photos: 1, stayed: 1, bytes: size });
  expect([...(await desk.store.photosHere())].sort()).toEqual([fresh, between, side].sort());
  expect(await answer(desk, (on) => photoAway(on, `photo/${old}`))).toEqual({
    name: 'last.survey.zip',
    day: '2026-10-14',
  });
  expect(await answer(desk, (on) => photoAway(on, `photo/${between}`))).toBeNull();
  expect((await desk.store.held()).bytes).toBe(before.bytes - size);
  expect(await desk.store.allEntries()).toEqual(entries);
  const [work] = await answer(desk, freeableWorks);
  expect(work!.older.photos).toEqual([between]);
});

test('a bag that holds none of them frees nothing and says so; nor does nothing chosen', async () => {
  const { desk, old } = await withPhotos(3);
  expect(await freePhotos(desk, [old], bagOf(['f'.repeat(64)]))).toMatchObject({
    ok: false,
    reason: { code: 'bag holds none of them', params: { name: 'last.survey.zip' } },
  });
  expect(await freePhotos(desk, [], bagOf([old]))).toMatchObject({ ok: false, reason: { code: 'no photos chosen' } });
  expect(await desk.store.photosHere()).toHaveLength(4);
});

test('left off in the middle, each photo is either here or noted in the bag, never neither', async () => {
  const { desk, old, fresh, between } = await withPhotos(4);
  const all = [old, fresh, between];
  const leave = new AbortController();
  const freed = await done(
    freePhotos(desk, all, bagOf(all), { signal: leave.signal, heard: (gone) => gone === 2 && leave.abort() }),
  );
  expect(freed).toMatchObject({ photos: 2, stayed: 1 });
  for (const name of all) {
    const here = (await desk.store.photo(name)) !== undefined;
    expect(here).toBe((await answer(desk, (on) => photoAway(on, `photo/${name}`))) === null);
  }
});

test('what the device holds is told anew once photos have left it', async () => {
  const { desk, old } = await withPhotos(9);
  const question = storageHealth(desk);
  const leave = question.subscribe(() => undefined);
  await expect.poll(() => question.get()?.photos).toBe(4);
  await done(freePhotos(desk, [old], bagOf([old])));
  await expect.poll(() => question.get()?.photos).toBe(3);
  leave();
});

test('a photo that comes back from its bag is here again', async () => {
  const { desk, old } = await withPhotos(5);
  const whole = (await desk.store.photo(old))!;
  await done(freePhotos(desk, [old], bagOf([old])));
  await desk.store.keepPhoto(whole);
  const [work] = await answer(desk, freeableWorks);
  expect(work!.older.photos).toContain(old);
});

/** A bag of this desk's survey with these photos in it, as a file a person opens. */
const bagFile = async (desk: Desk, names: readonly string[], harm?: (zip: Uint8Array) => void): Promise<File> => {
  const photos = await Promise.all(names.map(async (name) => new Uint8Array((await desk.store.photo(name))!.bytes)));
  const zip = zipOf(asZipped(bagged(payloadOf(desk.collection, await desk.store.allEntries(), photos)), 'bag/'));
  harm?.(zip);
  return new File([zip], 'patina-round-2026-10-15.survey.zip');
};

test('opened again and every hash matched, the bag says which photos it holds, and those may go', async () => {
  const { desk, old, between } = await withPhotos(6);
  const file = await bagFile(desk, [old, between]);
  const heard: number[] = [];
  const { bag } = await done(photosInBag(file, { heard: (now, all) => heard.push(now / all) }));
  expect(bag).toMatchObject({ name: file.name, day: '2026-10-15' });
  expect([...bag.photos].sort()).toEqual([old, between].sort());
  expect(heard.at(-1)).toBe(1);
  expect(await done(freePhotos(desk, [old, between], bag))).toMatchObject({ photos: 2, stayed: 0 });
});

test('one wrong byte in one photo of the bag, and no photo of it may go; nor from a survey file, which holds none', async () => {
  const { desk, old, between } = await withPhotos(7);
  const inBag = new Uint8Array((await desk.store.photo(between))!.bytes);
  const at = (zip: Uint8Array) => Buffer.from(zip).indexOf(Buffer.from(inBag)) + 40;
  const file = await bagFile(desk, [old, between], (zip) => {
    zip[at(zip)]! ^= 1;
  });
  expect(await photosInBag(file)).toMatchObject({ ok: false, reason: { code: 'bag: file altered' } });
  expect(await photosInBag(new File(['{}'], 'a.survey.json'))).toMatchObject({ ok: false });
  expect(await desk.store.photosHere()).toHaveLength(4);
});

test('reading the bag can be left off', async () => {
  const { desk, old } = await withPhotos(8);
  const leave = new AbortController();
  leave.abort();
  expect(await photosInBag(await bagFile(desk, [old]), { signal: leave.signal })).toMatchObject({
    ok: false,
    reason: { code: 'checking left off' },
  });
});
