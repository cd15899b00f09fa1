import { expect, test } from 'vitest';
import {
  acceptImport,
  addSculpture,
  type CarryPreview,
  commitChanges,
  type Desk,
  editSculpture,
  openSurveyFile,
  prepareSurvey,
  sayOne,
  setPlace,
  settle,
  undoImport,
  unsettled,
} from '../../src/actions';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

const fileOf = async (desk: Desk, options = {}): Promise<File> => {
  const { prepared } = await done(prepareSurvey(desk, options));
  return new File([prepared.bytes], prepared.name);
};

const previewOf = async (desk: Desk, file: File): Promise<CarryPreview> => {
  const opened = await openSurveyFile(desk, file);
  if (!opened.ok) throw new Error(JSON.stringify(opened));
  return opened.preview;
};

const carryIn = async (desk: Desk, file: File) => done(acceptImport(desk, await previewOf(desk, file)));
const bytesOf = async (desk: Desk): Promise<string> => (await fileOf(desk)).text();

const filled = async (seed: number) => {
  const desk = await freshDesk(seed);
  await done(
    commitChanges(desk, { code: 'deed: collection renamed', params: {} }, [
      { thing: desk.collection, kind: 'collection', within: desk.collection, body: { name: 'Garden' } },
    ]),
  );
  const work = await aWork(desk, { title: 'W', number: '1', areas: [1, 2] });
  await aRound(desk, work, '2025-05-12', [{ 'green-spots': 0.03 }, 'nothing']);
  return { desk, work };
};

test('out, into an empty tablet, and out again: the same bytes', async () => {
  const { desk } = await filled(1);
  const other = await freshDesk(2);
  const file = await fileOf(desk);
  const preview = await previewOf(other, file);
  expect(preview.entries.length).toBe(preview.all);
  expect(preview.rows.some((row) => row.new > 0)).toBe(true);
  expect(await other.store.allEntries(), 'a preview stores nothing').toEqual([]);
  await carryIn(other, file);
  expect(await bytesOf(other)).toBe(await file.text());
  expect(other.collection).toBe(desk.collection);
});

test('two tablets that worked apart end with equal bytes, whoever opens whose file first', async () => {
  const { desk: a, work } = await filled(3);
  const b = await freshDesk(4);
  await carryIn(b, await fileOf(a));
  await done(editSculpture(a, work.sculpture, { title: 'as A says' }));
  await done(editSculpture(b, work.sculpture, { title: 'as B says' }));
  await done(addSculpture(b, { number: '2', title: 'only on B' }));
  const [fromA, fromB] = [await fileOf(a), await fileOf(b)];
  await carryIn(a, fromB);
  await carryIn(b, fromA);
  expect(await bytesOf(a)).toBe(await bytesOf(b));
  const [here, there] = [await a.store.current(work.sculpture), await b.store.current(work.sculpture)];
  expect(here?.heads).toHaveLength(2);
  expect(there?.heads).toEqual(here?.heads);
  await done(settle(a, work.sculpture, { version: here?.heads[1] ?? '' }));
  expect((await a.store.current(work.sculpture))?.heads).toHaveLength(1);
  await carryIn(b, await fileOf(a));
  expect((await b.store.current(work.sculpture))?.heads).toHaveLength(1);
});

test('an import is taken back whole; another collection is never united without a word', async () => {
  const { desk } = await filled(5);
  const { desk: other } = await filled(6);
  const before = await bytesOf(other);
  const preview = await previewOf(other, await fileOf(desk));
  expect(preview.otherCollection).toBeDefined();
  expect(await acceptImport(other, preview)).toMatchObject({ ok: false, reason: { code: 'other collection' } });
  expect(await bytesOf(other)).toBe(before);
  const { deed } = await done(acceptImport(other, preview, { otherCollection: true }));
  expect(await bytesOf(other)).not.toBe(before);
  await done(undoImport(other, deed));
  expect(await bytesOf(other)).toBe(before);
});

test('a place left at home is not in the file, and the file says what it still holds', async () => {
  const { desk, work } = await filled(7);
  await done(setPlace(desk, work.sculpture, 'behind the boathouse'));
  expect(await (await fileOf(desk)).text()).toContain('boathouse');
  const { prepared } = await done(prepareSurvey(desk, { without: ['places'] }));
  expect(new TextDecoder().decode(prepared.bytes)).not.toContain('boathouse');
  expect(prepared.holds.map((h) => h.what)).toContain('finding');
});

test('a file that is none is refused in words, and nothing is stored', async () => {
  const { desk } = await filled(8);
  const before = await bytesOf(desk);
  for (const text of ['', '{', '[]', '{"format":"something else"}', '\u0000\u0001']) {
    expect((await openSurveyFile(desk, new File([text], 'x.json'))).ok, text).toBe(false);
  }
  expect(await bytesOf(desk)).toBe(before);
});

test('one round begun apart on two tablets is said to be one, and what both recorded is settled once', async () => {
  const { desk: a, work } = await filled(9);
  const b = await freshDesk(10);
  await carryIn(b, await fileOf(a));
  const onA = await aRound(a, work, '2026-05-12', [{ 'green-spots': 0.03 }, 'nothing']);
  const onB = await aRound(b, work, '2026-05-13', [{ 'green-spots': 0.1 }, 'nothing']);
  await carryIn(a, await fileOf(b));
  await done(sayOne(a, onA, onB));
  const question = unsettled(a);
  question.subscribe(() => undefined);
  await expect
    .poll(() =>
      question
        .get()
        ?.map((u) => u.kind)
        .sort(),
    )
    .toEqual(['finding', 'visit', 'visit']);
  const finding = question.get()?.find((u) => u.kind === 'finding');
  expect(finding?.versions.map((v) => v.body.round)).toEqual([onA, onA]);
  for (const { thing, versions } of question.get() ?? [])
    await done(settle(a, thing, { version: versions[0]?.id ?? '' }));
  await expect.poll(() => question.get()).toEqual([]);
  await a.store.checkCounts();
  await carryIn(b, await fileOf(a));
  expect(await bytesOf(b)).toBe(await bytesOf(a));
});
