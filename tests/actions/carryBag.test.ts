import { expect, test } from 'vitest';
import {
  acceptImport,
  type CarryPreview,
  type Change,
  commitChanges,
  type Desk,
  keepPhoto,
  openSurveyFile,
  photosFound,
  prepareSurvey,
  undoImport,
} from '../../src/actions';
import { sweepArrivals } from '../../src/actions/carry';
import { type BodyOf, nameOf } from '../../src/engine/record';
import { jpeg, tiff } from '../device/photo/camera';
import { asFile, asZipped, bagged, hashOf, payloadOf, picture } from '../files/bags';
import { zipOf } from '../files/zipped';
import { aWork, done, freshDesk } from '../screens/deskwork';

const pictures = [picture(1), picture(2), picture(3)];
const hashes = pictures.map(hashOf);

/** A desk with one work and three photos, bytes and all. */
const photographed = async (seed: number) => {
  const desk = await freshDesk(seed);
  const { sculpture: work } = await aWork(desk, { title: 'W', number: '1', areas: [1] });
  for (const bytes of pictures) {
    const sha256 = hashOf(bytes);
    await desk.store.keepPhoto({ sha256, mime: 'image/jpeg', bytes: bytes.slice().buffer });
    const body: BodyOf<'photo'> = { sculpture: work, sha256, mime: 'image/jpeg', bytes: bytes.length, role: 'other' };
    const change: Change = { thing: nameOf.photo(sha256), kind: 'photo', within: work, body };
    await done(commitChanges(desk, { code: 'deed: photo kept', params: {} }, [change]));
  }
  return { desk, work };
};

const bagOf = async (desk: Desk, photos: readonly Uint8Array[] = pictures): Promise<File> =>
  asFile(zipOf(asZipped(bagged(payloadOf(desk.collection, await desk.store.allEntries(), photos)), 'bag/')));

const previewOf = async (desk: Desk, file: File): Promise<CarryPreview> => {
  const opened = await openSurveyFile(desk, file);
  if (!opened.ok) throw new Error(JSON.stringify(opened));
  return opened.preview;
};
const textOf = async (desk: Desk): Promise<string> =>
  new TextDecoder().decode((await done(prepareSurvey(desk))).prepared.bytes);
const photosOn = async (desk: Desk) => (await desk.store.photosHere()).sort();

test('a bag carried into an empty tablet brings the survey and every photo, and going out again it is the same', async () => {
  const { desk } = await photographed(1);
  const other = await freshDesk(2);
  const preview = await previewOf(other, await bagOf(desk));
  expect(preview.rows.find((row) => row.title === 'W')).toMatchObject({ photosComing: 3, photosMissing: 0 });
  expect(await other.store.allEntries(), 'a preview stores nothing').toEqual([]);
  expect(await photosOn(other)).toEqual([]);
  const heard: number[] = [];
  const taken = await done(acceptImport(other, preview, { heard: (bytes) => heard.push(bytes) }));
  expect(taken.photos).toBe(3);
  expect(heard).toEqual([60, 120, 180]);
  expect(await photosOn(other)).toEqual([...hashes].sort());
  expect(await textOf(other)).toBe(await textOf(desk));
  expect(await other.store.metas('arriving ')).toEqual([]);
});

test('an import taken back takes the photos that came with it, and leaves those that were here', async () => {
  const { desk } = await photographed(3);
  const other = await freshDesk(4);
  const before = await textOfNothing(other);
  const [first] = pictures;
  if (!first) throw new Error('no picture');
  await other.store.keepPhoto({ sha256: hashOf(first), mime: 'image/jpeg', bytes: first.slice().buffer });
  const { deed } = await done(acceptImport(other, await previewOf(other, await bagOf(desk))));
  expect(await photosOn(other)).toEqual([...hashes].sort());
  await done(undoImport(other, deed));
  expect(await photosOn(other)).toEqual([hashOf(first)]);
  expect(await other.store.metas('photos of ')).toEqual([]);
  expect(await textOfNothing(other)).toBe(before);
});

const textOfNothing = async (desk: Desk) => JSON.stringify(await desk.store.allEntries());

test('photos spoken of and not in the bag are a normal state, and find their place when a later bag brings them', async () => {
  const { desk } = await photographed(5);
  const other = await freshDesk(6);
  const without = await previewOf(other, await bagOf(desk, []));
  expect(without.photosMissing).toBe(3);
  await done(acceptImport(other, without));
  expect(await photosOn(other)).toEqual([]);
  const later = await previewOf(other, await bagOf(desk, pictures.slice(0, 2)));
  expect(later.entries).toEqual([]);
  expect(later.photos.length).toBe(2);
  expect(later.photosMissing).toBe(1);
  const taken = await done(acceptImport(other, later));
  expect(taken).toMatchObject({ added: 0, photos: 2, deed: '' });
  expect(await photosOn(other)).toEqual(hashes.slice(0, 2).sort());
});

test('a photo of the bag nobody speaks of is not kept', async () => {
  const { desk } = await photographed(7);
  const other = await freshDesk(8);
  await done(acceptImport(other, await previewOf(other, await bagOf(desk, [...pictures, picture(9)]))));
  expect(await photosOn(other)).toEqual([...hashes].sort());
});

test('carrying in left off in the middle leaves nothing behind', async () => {
  const { desk } = await photographed(9);
  const other = await freshDesk(10);
  const preview = await previewOf(other, await bagOf(desk));
  const leaving = new AbortController();
  const outcome = await acceptImport(other, preview, { signal: leaving.signal, heard: () => leaving.abort() });
  expect(outcome).toMatchObject({ ok: false, reason: { code: 'carrying in left off' } });
  expect(await photosOn(other)).toEqual([]);
  expect(await other.store.allEntries()).toEqual([]);
  expect(await other.store.metas('arriving ')).toEqual([]);
});

test('an import cut off between the photos and the entries is swept at the next start, photos of others stay', async () => {
  const { desk, work } = await photographed(11);
  const [kept, ...stray] = [picture(20), picture(21), picture(22)];
  for (const bytes of [kept, ...stray])
    if (bytes) await desk.store.keepPhoto({ sha256: hashOf(bytes), mime: 'image/jpeg', bytes: bytes.slice().buffer });
  if (!kept) throw new Error('no picture');
  const body: BodyOf<'photo'> = {
    sculpture: work,
    sha256: hashOf(kept),
    mime: 'image/jpeg',
    bytes: kept.length,
    role: 'other',
  };
  const change: Change = { thing: nameOf.photo(hashOf(kept)), kind: 'photo', within: work, body };
  await done(commitChanges(desk, { code: 'deed: photo kept', params: {} }, [change]));
  await desk.store.setMeta(
    'arriving x',
    [kept, ...stray].map((bytes) => hashOf(bytes)),
  );
  await sweepArrivals(desk);
  expect(await photosOn(desk)).toEqual([...hashes, hashOf(kept)].sort());
  expect(await desk.store.metas('arriving ')).toEqual([]);
  expect((await desk.store.held()).photos).toBe(4);
});

test('a file that changed between the preview and the taking in is refused, and nothing of it stays', async () => {
  const { desk } = await photographed(13);
  const other = await freshDesk(14);
  const file = await bagOf(desk);
  const preview = await previewOf(other, file);
  const bytes = new Uint8Array(await file.arrayBuffer());
  const at = preview.photos[2]?.file.start ?? 0;
  bytes[at + 10] = (bytes[at + 10] ?? 0) ^ 1;
  const outcome = await acceptImport(other, { ...preview, file: asFile(bytes) });
  expect(outcome).toMatchObject({ ok: false, reason: { code: 'bag: file altered' } });
  expect(await photosOn(other)).toEqual([]);
  expect(await other.store.allEntries()).toEqual([]);
});

test('a bag whose photo is none is refused, whatever its name and its hash say', async () => {
  const desk = await freshDesk(15);
  const { sculpture: work } = await aWork(desk, { title: 'W', number: '1', areas: [1] });
  const drawing = new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>');
  const sha256 = hashOf(drawing);
  const body: BodyOf<'photo'> = { sculpture: work, sha256, mime: 'image/jpeg', bytes: drawing.length, role: 'other' };
  const change: Change = { thing: nameOf.photo(sha256), kind: 'photo', within: work, body };
  await done(commitChanges(desk, { code: 'deed: photo kept', params: {} }, [change]));
  const opened = await openSurveyFile(await freshDesk(16), await bagOf(desk, [drawing]));
  expect(opened).toMatchObject({ ok: false, problems: [{ problem: { code: 'bag: no picture' } }] });
});

test('the same bag twice adds nothing the second time', async () => {
  const { desk } = await photographed(17);
  const other = await freshDesk(18);
  const file = await bagOf(desk);
  await done(acceptImport(other, await previewOf(other, file)));
  const again = await previewOf(other, file);
  expect([again.entries.length, again.photos.length]).toEqual([0, 0]);
});

test('single picture files find the photos that are missing here, as they are or with their place blanked; others are passed over', async () => {
  const { desk, work } = await photographed(19);
  const [first, second] = hashes;
  for (const name of [first, second]) if (name) await desk.store.dropPhoto(name);
  // Taken in with its place blanked: the file on the camera still has it.
  const { photo } = await done(keepPhoto(desk, work, new File([placed()], 'a.jpg'), 'other'));
  await desk.store.dropPhoto(photo.slice(6));
  const files = [pictures[0], pictures[2], placed(), new TextEncoder().encode('a letter')].map(
    (bytes, i) => new File([new Uint8Array(bytes ?? [])], `${i}.jpg`),
  );
  expect(await done(photosFound(desk, files))).toMatchObject({ placed: 2, passedOver: 2 });
  expect(await photosOn(desk)).toEqual([hashes[0], hashes[2], photo.slice(6)].sort());
  expect(await done(photosFound(desk, files))).toMatchObject({ placed: 0, passedOver: 4 });
});

const placed = (): Uint8Array<ArrayBuffer> => jpeg({ exif: tiff(true, { gps: true }) });
