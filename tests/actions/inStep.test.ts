import { describe, expect, test } from 'vitest';
import {
  acceptImport,
  addSculpture,
  addSurveyor,
  commitChanges,
  type Desk,
  editSculpture,
  eraseName,
  erasePhoto,
  keepPhoto,
  openSurveyFile,
  prepareSurvey,
  undoImport,
  undoLast,
} from '../../src/actions';
import { inStepOf, joinFolder, step, switchOff } from '../../src/actions/in-step';
import { attempt } from '../../src/actions/outcome';
import { type Folder, folderReason, memoryFolder } from '../../src/device/folder';
import { StoreProblem } from '../../src/device/storeProblem';
import { writeSurvey } from '../../src/engine/exchange';
import { jpeg, tiff } from '../device/photo/camera';
import { answered } from '../files/answered';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

const text = (bytes: Uint8Array | undefined) => new TextDecoder().decode(bytes);
const bytesOf = (said: string) => new TextEncoder().encode(said) as Uint8Array<ArrayBuffer>;
const surveyOf = async (desk: Desk) => text(writeSurvey(desk.collection, await desk.store.allEntries()));
const join = (desk: Desk, folder: Folder) => attempt(() => joinFolder(desk, folder, { way: 'picked', name: 'shared' }));
const stepped = async (desk: Desk) => (await done(step(desk))).stepped;
const pathsIn = async (folder: Folder) => {
  const paths: string[] = [];
  for (const { name, isFolder } of await folder.list(''))
    for (const file of isFolder ? await folder.list(name) : []) paths.push(`${name}/${file.name}`);
  return paths.sort();
};
const everythingIn = async (folder: Folder) =>
  (await Promise.all((await pathsIn(folder)).map(async (path) => text(await folder.get(path))))).join('\n');
const photoFile = (name: string) =>
  new File([jpeg({ exif: tiff(true, {}), xmp: name })], `${name}.jpg`, { type: 'image/jpeg' });

const called = (desk: Desk, name: string) =>
  commitChanges(desk, { code: 'deed: collection set up', params: { name } }, [
    { thing: desk.collection, kind: 'collection', within: desk.collection, body: { name } },
  ]);

/** A tablet with a work and a round on it that has joined the folder, and a second one that began with the folder. */
const two = async (seed: number) => {
  const folder = memoryFolder();
  const a = await freshDesk(seed);
  await done(called(a, 'Garden'));
  const work = await aWork(a, { title: 'Heron', number: '1', areas: [1, 2] });
  const round = await aRound(a, work, '2025-05-12', [{ 'green-spots': 0.03 }, 'nothing']);
  await done(join(a, folder));
  const b = await freshDesk(seed + 1);
  await done(join(b, folder));
  return { folder, a, b, work, round };
};

describe('keeping in step', () => {
  test('a tablet on which nothing was entered takes over the collection of the folder, to the same bytes', async () => {
    const { a, b } = await two(1);
    expect(b.collection).toBe(a.collection);
    expect(await surveyOf(b)).toBe(await surveyOf(a));
    expect(await b.store.checkCounts()).toBe((await a.store.held()).entries);
  });

  test('what each entered apart, with a photo each, is on all of them after each has stepped twice', async () => {
    const { folder, a, b, work } = await two(10);
    const c = await freshDesk(12);
    await done(join(c, folder));
    await aRound(b, work, '2026-05-12', [{ 'green-spots': 0.1 }, 'nothing']);
    await done(keepPhoto(b, work.sculpture, photoFile('b'), 'zone'));
    await aRound(c, work, '2026-06-12', ['nothing', 'nothing']);
    await done(keepPhoto(a, work.sculpture, photoFile('a'), 'zone'));
    await done(editSculpture(a, work.sculpture, { title: 'Heron at noon' }));
    for (const desk of [a, b, c, a, b, c]) await stepped(desk);
    expect(await surveyOf(b)).toBe(await surveyOf(a));
    expect(await surveyOf(c)).toBe(await surveyOf(a));
    expect((await a.store.photosHere()).length).toBe(2);
    for (const desk of [b, c]) expect(await desk.store.photosHere()).toEqual(await a.store.photosHere());
    expect(await stepped(a)).toMatchObject({ took: 0, gave: 0, photosIn: 0, photosOut: 0, faults: [] });
  });

  test('nothing is ever written a second time: a step with nothing new leaves the folder as it is', async () => {
    const { folder, a, b } = await two(20);
    const before = await everythingIn(folder);
    for (const desk of [a, b, a, b]) await stepped(desk);
    expect(await everythingIn(folder)).toBe(before);
  });

  test('more entries than one file holds go in several, each of which is read by itself', async () => {
    const { folder, a, b } = await two(30);
    for (let i = 0; i < 120; i++) await done(addSculpture(a, { number: `${i + 2}`, title: `Work ${i}` }));
    expect((await stepped(a)).gave).toBe(120);
    expect((await pathsIn(folder)).length).toBe(3);
    expect((await stepped(b)).took).toBe(120);
    expect(await surveyOf(b)).toBe(await surveyOf(a));
  });

  test('a network that goes in the middle loses nothing, and the next step goes on from there', async () => {
    const { folder, a, b, work } = await two(40);
    for (let i = 0; i < 250; i++) await done(addSculpture(a, { number: `${i + 2}`, title: `Work ${i}` }));
    await done(keepPhoto(a, work.sculpture, photoFile('a'), 'zone'));
    for (const desk of [a, b]) await done(switchOff(desk));
    let asked = 0;
    let until = 3;
    const flaky: Folder = {
      list: (...given) => count(() => folder.list(...given)),
      get: (...given) => count(() => folder.get(...given)),
      put: (...given) => count(() => folder.put(...given)),
      remove: (...given) => count(() => folder.remove(...given)),
    };
    const count = <T>(work: () => Promise<T>): Promise<T> => {
      if (++asked > until) return Promise.reject(new StoreProblem(folderReason('folder: no answer', {})));
      return work();
    };
    for (const desk of [a, b]) {
      asked = 0;
      let came = await join(desk, flaky);
      for (let tries = 0; !came.ok && tries < 60; tries++) {
        expect(came.reason.code).toBe('folder: no answer');
        asked = 0;
        until = 3 + tries;
        came = tries % 2 ? await join(desk, flaky) : await step(desk);
      }
      expect(came.ok).toBe(true);
    }
    expect(await surveyOf(b)).toBe(await surveyOf(a));
    expect(await b.store.photosHere()).toEqual(await a.store.photosHere());
    expect(await a.store.checkCounts()).toBe(await b.store.checkCounts());
  });

  test('a step that is left off says so, and the next goes on', async () => {
    const { a } = await two(50);
    await done(addSculpture(a, { number: '2', title: 'Deer' }));
    const off = await step(a, { signal: AbortSignal.abort() });
    expect(off).toMatchObject({ ok: false, reason: { code: 'step: left off' } });
    expect((await stepped(a)).gave).toBe(1);
  });
});

describe('what is not kept in step', () => {
  test('another collection: nothing is read or written, and nothing is switched on', async () => {
    const { folder } = await two(100);
    const before = await everythingIn(folder);
    const other = await freshDesk(102);
    await done(called(other, 'Quay'));
    const held = await surveyOf(other);
    const refused = await join(other, folder);
    expect(refused).toMatchObject({
      ok: false,
      reason: { code: 'step: other collection', params: { here: 'Quay', theirs: 'Garden' } },
    });
    expect([await everythingIn(folder), await surveyOf(other)]).toEqual([before, held]);
    expect(await step(other)).toMatchObject({ reason: { code: 'step: not switched on' } });
  });

  test('invented data, from here or from there', async () => {
    const folder = memoryFolder();
    const garden = { ...(await freshDesk(110)), invented: true };
    expect(await join(garden, folder)).toMatchObject({ reason: { code: 'step: invented' } });
    const { writeSegment } = await import('../../src/engine/exchange');
    const real = await freshDesk(111);
    await done(called(real, 'Demo'));
    const [entry] = await real.store.allEntries();
    const invented = { ...entry!, body: { ...entry!.body, invented: true } };
    await folder.put('someone/1.json', writeSegment(real.collection, [invented]));
    expect(await join(await freshDesk(112), folder)).toMatchObject({ reason: { code: 'step: invented' } });
  });
});

describe('files of others that are not whole', () => {
  const tamper = async (folder: Folder, path: string, change: (said: string) => string) => {
    const said = text(await folder.get(path));
    await folder.remove(path);
    await folder.put(path, bytesOf(change(said)));
    return said;
  };

  test.each([
    ['half written', (said: string) => said.slice(0, said.length / 2)],
    ['empty', () => ''],
    ['altered by hand', (said: string) => said.replace('Deer', 'Hare')],
    ['a survey of other making', () => '{"format":"patina-round-survey"}'],
  ])('%s: passed over and said, and taken in once it is whole', async (_, change) => {
    const { folder, a, b } = await two(200);
    await done(addSculpture(a, { number: '2', title: 'Deer' }));
    await stepped(a);
    const path = `${a.store.device}/2.json`;
    const whole = await tamper(folder, path, change);
    const held = await surveyOf(b);
    const { faults, took } = await stepped(b);
    expect(faults.map(({ fault }) => fault)).toEqual([{ code: 'step: file passed over', params: { path } }]);
    expect([took, await surveyOf(b)]).toEqual([0, held]);
    await tamper(folder, path, () => whole);
    expect(await stepped(b)).toMatchObject({ took: 1, faults: [] });
  });

  test('a file that builds on one which is missing waits for it, whole', async () => {
    const { folder, a, b, work } = await two(210);
    await done(editSculpture(a, work.sculpture, { title: 'Grey heron' }));
    await stepped(a);
    await done(editSculpture(a, work.sculpture, { title: 'White heron' }));
    await stepped(a);
    const missing = `${a.store.device}/2.json`;
    const whole = await folder.get(missing);
    await folder.remove(missing);
    const { faults, took } = await stepped(b);
    const waits = { code: 'step: file waits', params: { path: `${a.store.device}/3.json` } };
    expect([took, faults.map(({ fault }) => fault)]).toEqual([0, [waits]]);
    await folder.put(missing, whole!);
    expect(await stepped(b)).toMatchObject({ took: 2, faults: [] });
    expect(await surveyOf(b)).toBe(await surveyOf(a));
  });

  test('a folder that was emptied is filled again by whoever steps next', async () => {
    const { folder, a, b } = await two(220);
    for (const path of await pathsIn(folder)) await folder.remove(path);
    expect((await stepped(b)).gave).toBe((await a.store.held()).entries);
    expect((await stepped(a)).gave).toBe(0);
  });

  test('one id with two contents never becomes one entry: the later file is passed over', async () => {
    const { folder, a, b } = await two(230);
    const { writeSegment } = await import('../../src/engine/exchange');
    const [entry] = (await a.store.allEntries()).filter(({ kind }) => kind === 'sculpture');
    const other = { ...entry!, body: { ...entry!.body, title: 'Else' } };
    await folder.put('someone/1.json', writeSegment(a.collection, [other]));
    const held = await surveyOf(b);
    expect((await stepped(b)).faults[0]).toMatchObject({ problem: { code: 'one id, two contents' } });
    expect(await surveyOf(b)).toBe(held);
  });

  test('a photo that is not what its name says is not kept; one half written is written anew by who has it', async () => {
    const { folder, a, b, work } = await two(240);
    await done(keepPhoto(a, work.sculpture, photoFile('a'), 'zone'));
    await stepped(a);
    const [path] = (await pathsIn(folder)).filter((each) => each.startsWith('photos/'));
    await tamper(folder, path!, (said) => said.slice(0, 20));
    const { faults } = await stepped(b);
    expect(faults).toEqual([{ fault: { code: 'step: photo in the folder altered', params: { path } } }]);
    expect(await b.store.photosHere()).toEqual([]);
    expect((await stepped(a)).photosOut).toBe(1);
    expect(await stepped(b)).toMatchObject({ photosIn: 1, faults: [] });
  });
});

describe('what is erased', () => {
  test('a photo goes out of the folder and off the others, and an offline tablet does not bring it back', async () => {
    const { folder, a, b, work } = await two(300);
    const { photo } = await done(keepPhoto(a, work.sculpture, photoFile('a'), 'zone'));
    for (const desk of [a, b]) await stepped(desk);
    expect((await b.store.photosHere()).length).toBe(1);
    await done(erasePhoto(a, photo, { reason: 'A passer-by' }));
    await stepped(a);
    expect((await pathsIn(folder)).filter((path) => path.startsWith('photos/'))).toEqual([]);
    await done(editSculpture(b, work.sculpture, { title: 'Heron, seen offline' }));
    for (const desk of [b, a]) await stepped(desk);
    expect(await b.store.photosHere()).toEqual([]);
    expect((await pathsIn(folder)).filter((path) => path.startsWith('photos/'))).toEqual([]);
    expect(await surveyOf(b)).toBe(await surveyOf(a));
  });

  test('a person’s name goes out of the folder’s files too, and all else stays in them', async () => {
    const { folder, a, b } = await two(310);
    const { surveyor } = await done(addSurveyor(a, { role: 'Steward', name: 'Ann Leigh' }));
    for (const desk of [a, b]) await stepped(desk);
    expect(await everythingIn(folder)).toContain('Ann Leigh');
    await done(eraseName(a, surveyor, { reason: 'She asked', alsoIn: [] }));
    await stepped(a);
    expect(await everythingIn(folder)).not.toContain('Ann Leigh');
    await stepped(b);
    const c = await freshDesk(313);
    await done(join(c, folder));
    for (const desk of [b, c]) expect(await surveyOf(desk)).toBe(await surveyOf(a));
    expect(await surveyOf(b)).not.toContain('Ann Leigh');
  });
});

describe('a copied tablet', () => {
  test('that writes under the name of another is found out, gets a name of its own, and nothing is lost', async () => {
    const { folder, a, b, work } = await two(400);
    // What a copy of A would have written under A’s name, as its next file.
    const { writeSegment } = await import('../../src/engine/exchange');
    await done(addSculpture(b, { number: '2', title: 'Deer' }));
    const [deer] = (await b.store.allEntries()).filter(({ body }) => body.title === 'Deer');
    const copied = { ...deer!, device: a.store.device, n: a.store.made + 1 };
    const name = a.store.device;
    await folder.put(`${name}/2.json`, writeSegment(a.collection, [{ ...copied, id: a.newId() }]));
    await done(editSculpture(a, work.sculpture, { title: 'Grey heron' }));
    const { faults, gave, took } = await stepped(a);
    expect([faults[0]?.fault.code, gave, took]).toEqual(['step: copied tablet', 1, 1]);
    expect(a.store.device).not.toBe(name);
    expect(await pathsIn(folder)).toContain(`${a.store.device}/1.json`);
  });

  test('whose file took the place of one already written is found out a step later, and what was lost is written again', async () => {
    const { folder, a, work } = await two(410);
    await done(editSculpture(a, work.sculpture, { title: 'Grey heron' }));
    await stepped(a);
    const path = `${a.store.device}/2.json`;
    const { writeSegment } = await import('../../src/engine/exchange');
    const [other] = (await a.store.allEntries()).filter(({ kind }) => kind === 'zone');
    await folder.remove(path);
    await folder.put(path, writeSegment(a.collection, [other!]));
    expect(await stepped(a)).toMatchObject({ gave: 1, faults: [{ fault: { code: 'step: copied tablet' } }] });
    expect(await everythingIn(folder)).toContain('Grey heron');
  });
});

describe('taking back', () => {
  test('Undo passes over what came by the folder, and takes back one’s own last deed', async () => {
    const { a, b, work } = await two(500);
    await done(editSculpture(b, work.sculpture, { title: 'Mine' }));
    await done(addSculpture(a, { number: '2', title: 'Deer' }));
    for (const desk of [a, b]) await stepped(desk);
    expect((await done(undoLast(b))).name.code).toBe('deed: sculpture edited');
    expect((await b.store.ofKind('sculpture')).map(({ lead }) => lead.body.title).sort()).toEqual(['Deer', 'Heron']);
  });

  test('an import cannot be taken back once it lies in the folder: it would come back from there', async () => {
    const { a, b } = await two(510);
    await done(switchOff(b));
    await done(addSculpture(b, { number: '2', title: 'Deer' }));
    const { prepared } = await done(prepareSurvey(b));
    const opened = await openSurveyFile(a, new File([prepared.bytes], prepared.name));
    if (!opened.ok) throw new Error(opened.reason.code);
    const { deed } = await done(acceptImport(a, opened.preview));
    await stepped(a);
    expect(await undoImport(a, deed)).toMatchObject({ ok: false, reason: { code: 'in step already' } });
    expect((await a.store.ofKind('sculpture')).length).toBe(2);
  });
});

test('the screen is told what waits here, who is in it, and that the folder is at hand', async () => {
  const { a, b, work } = await two(600);
  await done(editSculpture(b, work.sculpture, { title: 'Grey heron' }));
  expect(await answered(inStepOf(b))).toMatchObject({
    joined: { name: 'shared', last: { gave: 0 } },
    atHand: true,
    waiting: { entries: 1, photos: 0 },
  });
  await stepped(b);
  await stepped(a);
  const { waiting, who } = await answered(inStepOf(a));
  expect(waiting).toEqual({ entries: 0, photos: 0 });
  expect(who.map(({ here, entries }) => [here, entries]).sort()).toEqual([
    [false, 1],
    [true, (await a.store.held()).entries - 1],
  ]);
});
