import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import {
  acceptImport,
  addSculpture,
  type BagOptions,
  type BagPrepared,
  bagSize,
  type Desk,
  keepPhoto,
  openSurveyFile,
  prepareBag,
  prepareSurvey,
  type Question,
  removePhoto,
  saveFile,
} from '../../src/actions';
import { carriedRows } from '../../src/actions/keeping/carriedOut';
import { checkedBag, checking, opening, writing } from '../../src/device/bag/inWorker';
import { unpackedFile } from '../../src/device/bag/unpackedFile';
import { zipDirectory } from '../../src/device/bag/zipDirectory';
import { bagPaths } from '../../src/engine/bag';
import { idPart } from '../../src/engine/record';
import { jpeg, tiff } from '../device/photo/camera';
import { bagPapers } from '../files/bagPapers';
import { bagWorkerHere } from '../files/bagWorkerHere';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

const desks: Desk[] = [];
beforeEach(() => {
  bagWorkerHere({ write: writing(bagPapers), check: checking, open: opening });
});
afterEach(() => {
  vi.unstubAllGlobals();
  for (const { store } of desks.splice(0)) store.close();
});

const aDesk = async (seed: number): Promise<Desk> => {
  const desk = await freshDesk(seed);
  desks.push(desk);
  return desk;
};

const answer = async <T>(question: Question<T>): Promise<T> => {
  const leave = question.subscribe(() => undefined);
  await vi.waitFor(() => expect(question.get()).toBeDefined());
  const got = question.get();
  leave();
  return got as T;
};

const picture = (name: string): File =>
  new File([jpeg({ exif: tiff(true, {}), xmp: name })], `${name}.jpg`, { type: 'image/jpeg' });

/** Two works, a round and a photo of the first, a photo of the second. */
const withPhotos = async (seed: number) => {
  const desk = await aDesk(seed);
  const heron = await aWork(desk, { title: 'Grey heron', number: '2', areas: [1] });
  const round = await aRound(desk, heron, '2026-10-01', ['nothing']);
  const { sculpture: boat } = await done(addSculpture(desk, { number: '3', title: 'Boat on the quay' }));
  const keep = async (work: string, name: string) =>
    idPart((await done(keepPhoto(desk, work, picture(name), 'other', work === boat ? {} : { round }))).photo);
  const [ofHeron, ofBoat] = [await keep(heron.sculpture, 'heron'), await keep(boat, 'boat')];
  return { desk, heron: heron.sculpture, boat, ofHeron, ofBoat };
};

const bagOf = async (desk: Desk, options: BagOptions = {}): Promise<BagPrepared> => {
  const { prepared } = await done(prepareBag(desk, options));
  if (!prepared) throw new Error('It was left off.');
  return prepared;
};

const textIn = async (bag: Blob, path: string): Promise<string> => {
  const files = await zipDirectory(bag);
  const file = files.ok ? files.value.find((one) => one.name.endsWith(`/${path}`)) : undefined;
  if (!file) throw new Error(`${path} is not in it.`);
  return new TextDecoder().decode(await unpackedFile(bag, file));
};

test('a bag carried into an empty tablet brings every entry and every photo, byte for byte', async () => {
  const { desk, ofHeron, ofBoat } = await withPhotos(1);
  const other = await aDesk(2);
  const bag = await bagOf(desk);
  expect(bag).toMatchObject({ photos: 2, missing: 0, damaged: 0, left: false });
  const opened = await openSurveyFile(other, bag.file);
  if (!opened.ok) throw new Error(JSON.stringify(opened));
  await done(acceptImport(other, opened.preview));
  const bytesOf = async (from: Desk) => (await done(prepareSurvey(from))).prepared.bytes;
  expect(await bytesOf(other)).toEqual(await bytesOf(desk));
  for (const sha256 of [ofHeron, ofBoat])
    expect(new Uint8Array((await other.store.photo(sha256))!.bytes)).toEqual(
      new Uint8Array((await desk.store.photo(sha256))!.bytes),
    );
});

test('the same record makes the same bag on the same day', async () => {
  const { desk } = await withPhotos(3);
  const [one, two] = [await bagOf(desk), await bagOf(desk)];
  expect(new Uint8Array(await one.file.arrayBuffer())).toEqual(new Uint8Array(await two.file.arrayBuffer()));
});

test('a photo that is not here is no fault: the bag leaves without it and says so, in words and for machines', async () => {
  const { desk, ofHeron, ofBoat } = await withPhotos(4);
  await desk.store.dropPhoto(ofBoat);
  expect(await answer(bagSize(desk))).toMatchObject({ photos: 1, missing: 1 });
  const bag = await bagOf(desk);
  expect(bag).toMatchObject({ photos: 1, missing: 1, damaged: 0 });
  const read = await checkedBag(bag.file);
  expect(read.ok && read.info.missing).toEqual([ofBoat]);
  expect(read.ok && read.photos.map(({ sha256 }) => sha256)).toEqual([ofHeron]);
  expect(await textIn(bag.file, bagPaths.readme)).toContain(ofBoat);
});

test('a photo whose bytes went bad never leaves under a name that is not theirs', async () => {
  const { desk, ofHeron, ofBoat } = await withPhotos(5);
  await damage(desk, ofBoat);
  const bag = await bagOf(desk);
  expect(bag).toMatchObject({ photos: 1, missing: 1, damaged: 1 });
  const read = await checkedBag(bag.file);
  expect(read.ok && read.photos.map(({ sha256 }) => sha256)).toEqual([ofHeron]);
});

test('a bag of one work holds its photos only, and what was left out is not in it', async () => {
  const { desk, heron, ofHeron } = await withPhotos(6);
  expect(await answer(bagSize(desk, [heron]))).toMatchObject({ photos: 1, missing: 0 });
  const bag = await bagOf(desk, { sculptures: [heron], without: ['names'] });
  const read = await checkedBag(bag.file);
  if (!read.ok) throw new Error(JSON.stringify(read.reasons));
  expect(read.photos.map(({ sha256 }) => sha256)).toEqual([ofHeron]);
  expect(read.info).toMatchObject({ sculptures: [heron], leftOut: ['names'], entries: bag.entries });
  expect(await textIn(bag.file, bagPaths.survey)).not.toContain('Boat on the quay');
  expect(await textIn(bag.file, bagPaths.report)).not.toContain('Boat on the quay');
});

test('a photo that was taken away does not leave', async () => {
  const { desk, ofHeron, ofBoat } = await withPhotos(7);
  await done(removePhoto(desk, `photo/${ofBoat}`));
  const read = await checkedBag((await bagOf(desk)).file);
  expect(read.ok && read.photos.map(({ sha256 }) => sha256)).toEqual([ofHeron]);
  expect(read.ok && read.info.missing).toEqual([]);
});

test('in it lie a report, a table, a description for machines and the schema beside the survey', async () => {
  const { desk } = await withPhotos(8);
  const { file } = await bagOf(desk);
  expect(await textIn(file, bagPaths.report)).toContain('Grey heron');
  expect(await textIn(file, bagPaths.findings)).toContain('\r\n');
  expect(JSON.parse(await textIn(file, bagPaths.linked))).toHaveProperty('@graph');
  expect(JSON.parse(await textIn(file, bagPaths.schema))).toHaveProperty('$schema');
});

test('it tells how far it is, and left off gives no bag', async () => {
  const { desk } = await withPhotos(9);
  const stages: string[] = [];
  await bagOf(desk, { heard: ({ stage }) => stages.push(stage) });
  expect(new Set(stages)).toEqual(new Set(['writing', 'reading back']));
  const leaving = new AbortController();
  const outcome = await done(prepareBag(desk, { signal: leaving.signal, heard: () => leaving.abort() }));
  expect(outcome.prepared).toBeUndefined();
});

test('nothing chosen is said, and no bag made', async () => {
  const desk = await aDesk(10);
  const outcome = await prepareBag(desk);
  expect(outcome).toMatchObject({ ok: false, reason: { code: 'bag of nothing' } });
});

test('only what has left counts as carried out, and a bag of some works not as everything', async () => {
  const { desk, heron } = await withPhotos(11);
  const bag = await bagOf(desk, { sculptures: [heron] });
  expect(await carriedRows(desk)).toEqual([]);
  vi.stubGlobal('navigator', { canShare: () => true, share: async () => undefined });
  await done(saveFile(desk, bag, 'share'));
  const [row] = await carriedRows(desk);
  expect(row).toMatchObject({ what: 'bag', name: bag.name, sculptures: [heron], photos: 1, entries: bag.entries });
});

/** One bit of the bytes under a hash, turned over where they lie. */
const damage = (desk: Desk, sha256: string): Promise<void> =>
  new Promise((resolve, reject) => {
    const asked = indexedDB.open(desk.store.name);
    asked.onsuccess = () => {
      const t = asked.result.transaction('photoBytes', 'readwrite');
      const rows = t.objectStore('photoBytes');
      const got = rows.get(sha256);
      got.onsuccess = () => {
        const row = got.result as { bytes: ArrayBuffer };
        const bytes = new Uint8Array(row.bytes.slice(0));
        bytes[bytes.length - 1] = (bytes.at(-1) ?? 0) ^ 1;
        rows.put({ ...row, bytes: bytes.buffer });
      };
      t.oncomplete = () => {
        asked.result.close();
        resolve();
      };
      t.onabort = () => reject(t.error);
    };
  });

/** A file a person picked, as the browser hands it over; full after so many bytes. */
const pickedFile = (room = Number.POSITIVE_INFINITY) => {
  const state = { bytes: [] as Uint8Array<ArrayBuffer>[], closed: false, aborted: false };
  const handle = {
    createWritable: async () => ({
      write: async (bite: Uint8Array<ArrayBuffer>) => {
        state.bytes.push(bite.slice());
        if (state.bytes.reduce((sum, { length }) => sum + length, 0) > room)
          throw new DOMException('full', 'QuotaExceededError');
      },
      close: async () => {
        state.closed = true;
      },
      abort: async () => {
        state.aborted = true;
      },
    }),
    getFile: async () => new File(state.bytes, 'picked.survey.zip'),
  };
  return { state, handle };
};

test('where there is no room here a bag goes straight into a picked file, is read back there, and has left', async () => {
  const { desk } = await withPhotos(12);
  const { state, handle } = pickedFile();
  vi.stubGlobal('showSaveFilePicker', async () => handle);
  const bag = await bagOf(desk, { straight: true });
  expect(bag).toMatchObject({ left: true, name: 'picked.survey.zip', photos: 2 });
  expect(state).toMatchObject({ closed: true, aborted: false });
  expect((await checkedBag(bag.file)).ok).toBe(true);
  expect(await carriedRows(desk)).toMatchObject([{ what: 'bag', name: 'picked.survey.zip', photos: 2 }]);
});

test('a place that is full is said with how much is wanted, and the picked file stays as it was', async () => {
  const { desk } = await withPhotos(13);
  const { state, handle } = pickedFile(2000);
  vi.stubGlobal('showSaveFilePicker', async () => handle);
  const outcome = await prepareBag(desk, { straight: true });
  expect(outcome).toMatchObject({ ok: false, reason: { code: 'no room for a bag', params: { megabytes: 1 } } });
  expect(state).toMatchObject({ closed: false, aborted: true });
  expect(await carriedRows(desk)).toEqual([]);
});

test('a bag that reads otherwise than it was written is never offered', async () => {
  const { desk } = await withPhotos(14);
  const { state, handle } = pickedFile();
  const getFile = async () => {
    const bytes = new Uint8Array(await new Blob(state.bytes).arrayBuffer());
    bytes[2000] = (bytes[2000] ?? 0) ^ 1;
    return new File([bytes], 'picked.survey.zip');
  };
  vi.stubGlobal('showSaveFilePicker', async () => ({ ...handle, getFile }));
  const outcome = await prepareBag(desk, { straight: true });
  expect(outcome).toMatchObject({ ok: false, reason: { code: 'bag not whole' } });
  expect(await carriedRows(desk)).toEqual([]);
});
