import { describe, expect, test } from 'vitest';
import {
  acceptImport,
  addInterpretation,
  addPlanned,
  addSurveyor,
  type Desk,
  editSculpture,
  editSurveyor,
  erasedSoFar,
  eraseName,
  erasePhoto,
  openPersonCheck,
  openSurveyFile,
  prepareSurvey,
  setClass,
  surveyors,
  undoLast,
  whatNames,
} from '../../src/actions';
import { readSurvey } from '../../src/engine/exchange';
import { nameOf } from '../../src/engine/record';
import { answered } from '../files/answered';
import { aRound, aWork, done, freshDesk, type Work } from '../screens/deskwork';

const reason = 'She asked for it';
const fileOf = async (desk: Desk): Promise<File> => {
  const { prepared } = await done(prepareSurvey(desk));
  return new File([prepared.bytes], prepared.name);
};
const carryIn = async (desk: Desk, file: File) => {
  const opened = await openSurveyFile(desk, file);
  if (!opened.ok) throw new Error(JSON.stringify(opened));
  return done(acceptImport(desk, opened.preview));
};
/** Everything the tablet holds, as text. */
const everything = async (desk: Desk): Promise<string> => {
  const metas = await desk.store.metas('');
  return JSON.stringify([await desk.store.allEntries(), metas, await desk.store.lastDeed()]).toLowerCase();
};
const code = async (outcome: Promise<{ ok: boolean; reason?: { code: string } }>) => (await outcome).reason?.code;

/** A work in which a person is named here and there. */
const named = async (seed: number): Promise<{ desk: Desk; work: Work; surveyor: string; round: string }> => {
  const desk = await freshDesk(seed);
  const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1, 2] });
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward', name: 'Ann Leigh' }));
  await done(editSurveyor(desk, surveyor, { role: 'Steward', name: 'Ann Lee' }));
  const round = await aRound(desk, work, '2025-05-12', [{ 'green-spots': 0.03 }, 'nothing']);
  const about = work.zones[0] ?? '';
  await done(setClass(desk, round, about, { condition: 2, setBy: 'Ann Lee' }));
  await done(addInterpretation(desk, work.sculpture, { statement: 'As ann  lee says, Anneleen differs', by: 'Other' }));
  await done(editSculpture(desk, work.sculpture, { note: 'Found by Ann Leigh' }));
  await done(editSculpture(desk, work.sculpture, { note: 'Found on the terrace' }));
  await done(openPersonCheck(desk, work.sculpture, { what: 'leans' }));
  return { desk, work, surveyor, round };
};

describe('Erasing a person’s name', () => {
  test('finds where else the words stand, in earlier versions and spellings too, and not where they are part of others', async () => {
    const { desk, surveyor, work } = await named(1);
    const { words, elsewhere } = await whatNames(desk, surveyor);
    expect(words).toEqual(['Ann Lee', 'Ann Leigh']);
    expect(elsewhere.map(({ kind, entries, canGo }) => [kind, entries, canGo]).sort()).toEqual([
      ['classSet', 1, true],
      ['interpretation', 1, true],
      ['sculpture', 1, true],
    ]);
    expect(elsewhere.find((e) => e.thing === work.sculpture)?.text).toBe('Found by Ann Leigh');
  });

  test('leaves no letter of it on the tablet, in the file or in the log, and everything else as it stood', async () => {
    const { desk, surveyor, work, round } = await named(2);
    const stood = await desk.store.currents([work.sculpture, ...work.zones, round]);
    const { elsewhere } = await whatNames(desk, surveyor);
    await done(eraseName(desk, surveyor, { reason, alsoIn: elsewhere.map((e) => e.thing) }));
    for (const spelled of ['ann lee', 'ann  lee', 'ann leigh']) {
      expect(await everything(desk)).not.toContain(spelled);
      expect((await (await fileOf(desk)).text()).toLowerCase()).not.toContain(spelled);
    }
    const after = await desk.store.currents([work.sculpture, ...work.zones, round]);
    expect(after.map((c) => [c?.lead.body, c?.heads.length])).toEqual(
      stood.map((c) => [c?.lead.body, c?.heads.length]),
    );
    expect((await desk.store.ofKind('classSet'))[0]?.lead.body.setBy).toBe('Steward');
    expect((await desk.store.ofKind('interpretation'))[0]?.lead.body.statement).toBe(
      'As Steward says, Anneleen differs',
    );
    expect(await answered(surveyors(desk))).toEqual([{ thing: surveyor, role: 'Steward' }]);
    expect(await desk.store.unsettled()).toEqual([]);
    await desk.store.checkCounts();
    const file = readSurvey(new Uint8Array(await (await fileOf(desk)).arrayBuffer()));
    expect(file).toMatchObject({ ok: true });
  });

  test('where the other texts are left, only the name kept apart goes', async () => {
    const { desk, surveyor } = await named(3);
    await done(eraseName(desk, surveyor, { reason, alsoIn: [] }));
    expect((await whatNames(desk, surveyor)).words).toEqual([]);
    expect((await desk.store.ofKind('classSet'))[0]?.lead.body.setBy).toBe('Ann Lee');
  });

  test('an older copy, carried in again, does not bring it back; and the copy loses it when it meets this survey', async () => {
    const { desk, surveyor } = await named(4);
    const old = await fileOf(desk);
    const other = await freshDesk(5);
    await carryIn(other, old);
    const { elsewhere } = await whatNames(desk, surveyor);
    await done(eraseName(desk, surveyor, { reason, alsoIn: elsewhere.map((e) => e.thing) }));
    const bytes = await (await fileOf(desk)).text();
    expect(await carryIn(desk, old)).toMatchObject({ added: 0 });
    expect(await (await fileOf(desk)).text()).toBe(bytes);
    await carryIn(other, await fileOf(desk));
    expect(await (await fileOf(other)).text()).toBe(bytes);
    expect(await everything(other)).not.toContain('ann lee');
  });

  test('a spelling put right on another tablet meanwhile does not bring the name back', async () => {
    const { desk, surveyor } = await named(6);
    const other = await freshDesk(7);
    await carryIn(other, await fileOf(desk));
    await done(editSurveyor(other, surveyor, { role: 'Steward', name: 'Anne Lee' }));
    await done(eraseName(desk, surveyor, { reason, alsoIn: [] }));
    await carryIn(desk, await fileOf(other));
    expect(await desk.store.current(nameOf.personName(surveyor))).toBeUndefined();
    await carryIn(other, await fileOf(desk));
    expect(await (await fileOf(other)).text()).toBe(await (await fileOf(desk)).text());
  });

  test('is not taken back by Undo; which reaches back behind it only where nothing had to be said again', async () => {
    const { desk, surveyor, work } = await named(8);
    await done(eraseName(desk, surveyor, { reason, alsoIn: [] }));
    expect(await done(undoLast(desk))).toMatchObject({ name: { code: 'deed: person check opened' } });
    const { surveyor: second } = await done(addSurveyor(desk, { role: 'Guest', name: 'Found' }));
    const { elsewhere } = await whatNames(desk, second);
    expect(elsewhere.map((e) => e.thing)).toEqual([work.sculpture]);
    await done(eraseName(desk, second, { reason, alsoIn: [work.sculpture] }));
    expect(await code(undoLast(desk))).toBe('nothing to undo');
    await done(editSculpture(desk, work.sculpture, { note: 'since' }));
    await done(undoLast(desk));
    expect((await desk.store.current(work.sculpture))?.lead.body.note).toBe('Guest on the terrace');
    expect(await code(undoLast(desk))).toBe('nothing to undo');
  });

  test('an earlier, longer spelling goes whole, though the present one is a part of it', async () => {
    const { desk, surveyor, work } = await named(14);
    await done(editSurveyor(desk, surveyor, { role: 'Steward', name: 'Ann' }));
    const { words, elsewhere } = await whatNames(desk, surveyor);
    expect(words).toEqual(['Ann', 'Ann Leigh', 'Ann Lee']);
    await done(eraseName(desk, surveyor, { reason, alsoIn: elsewhere.map((e) => e.thing) }));
    const all = await everything(desk);
    for (const left of ['leigh', ' lee', 'ann ']) expect(all).not.toContain(left);
    expect(elsewhere.map((e) => e.thing)).toContain(work.sculpture);
  });

  test('another tablet that takes the erasure in loses the name from its log and its notes too', async () => {
    const { desk, surveyor, round, work } = await named(15);
    const other = await freshDesk(16);
    await carryIn(other, await fileOf(desk));
    await done(setClass(other, round, work.zones[1] ?? '', { condition: 1, setBy: 'Curator' }));
    await done(addInterpretation(other, work.sculpture, { statement: 'The pond', by: 'Ann Lee' }));
    await other.store.touch({
      round,
      zone: work.zones[0] ?? '',
      at: other.now(),
      by: '',
      touch: { note: 'Ann Lee waits' },
    });
    const { elsewhere } = await whatNames(desk, surveyor);
    await done(eraseName(desk, surveyor, { reason, alsoIn: elsewhere.map((e) => e.thing) }));
    await carryIn(other, await fileOf(desk));
    expect((await other.store.touchesOf(round))[0]?.touch).toEqual({ note: 'Steward waits' });
    expect((await other.store.lastDeed())?.name).toMatchObject({
      code: 'deed: thought added',
      params: { by: 'Steward' },
    });
  });

  test('no name is taken for that surveyor again; a new surveyor may be named', async () => {
    const { desk, surveyor } = await named(9);
    await done(eraseName(desk, surveyor, { reason, alsoIn: [] }));
    expect(await code(editSurveyor(desk, surveyor, { role: 'Steward', name: 'Ann Lee' }))).toBe('name erased');
    await done(editSurveyor(desk, surveyor, { role: 'Keeper' }));
    await done(addSurveyor(desk, { role: 'Steward', name: 'Ann Lee' }));
  });

  test.each([
    ['without a reason', '  ', 'erasing reason missing'],
    ['with a reason that holds the name', 'Ann LEE left', 'reason holds the name'],
  ])('%s is refused, and nothing is erased', async (_, because, refused) => {
    const { desk, surveyor } = await named(10);
    const before = await desk.store.allEntries();
    expect(await code(eraseName(desk, surveyor, { reason: because, alsoIn: [] }))).toBe(refused);
    expect(await desk.store.allEntries()).toEqual(before);
  });

  test('of somebody who has none is refused', async () => {
    const { desk } = await named(11);
    const { surveyor } = await done(addSurveyor(desk, { role: 'Guest' }));
    expect(await code(eraseName(desk, surveyor, { reason, alsoIn: [] }))).toBe('no name to erase');
  });

  test('of somebody who never surveyed goes as the settings say: added with a role first, found in every signature, erased', async () => {
    const desk = await freshDesk(9);
    const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    const signed = [{ role: 'Conservator', name: 'Ida Ink', on: '2026-03-02' }];
    const { thing } = await done(
      addPlanned(desk, 'approval', {
        ...{ sculpture: work.sculpture, campaign: 'campaign/1', of: 'colour', date: '2026-03-02', answer: 'yes' },
        ...{ words: 'As agreed', photos: [], signed },
      }),
    );
    const { surveyor } = await done(addSurveyor(desk, { role: 'Conservator', name: 'Ida Ink' }));
    const { elsewhere } = await whatNames(desk, surveyor);
    expect(elsewhere.map((one) => one.thing)).toEqual([thing]);
    await done(eraseName(desk, surveyor, { reason, alsoIn: [thing] }));
    expect(await everything(desk)).not.toContain('ida ink');
    expect((await desk.store.current(thing))?.lead.body.signed).toEqual([{ ...signed[0], name: 'Conservator' }]);
  });

  test('two versions waiting to be settled stay two', async () => {
    const { desk, surveyor, work } = await named(12);
    const other = await freshDesk(13);
    await carryIn(other, await fileOf(desk));
    await done(editSculpture(desk, work.sculpture, { note: 'Ann Lee says pond' }));
    await done(editSculpture(other, work.sculpture, { note: 'Says terrace' }));
    await carryIn(desk, await fileOf(other));
    await done(eraseName(desk, surveyor, { reason, alsoIn: [work.sculpture] }));
    const current = await desk.store.current(work.sculpture);
    expect(current?.heads).toHaveLength(2);
    const bodies = (await desk.store.entriesOf(work.sculpture)).filter((e) => current?.heads.includes(e.id));
    expect(bodies.map((e) => e.body.note).sort()).toEqual(['Says terrace', 'Steward says pond']);
  });
});

describe('Erasing a photo', () => {
  const bytes = new Uint8Array([1, 2, 3]).buffer;
  const sha256 = 'ab'.repeat(32);
  const photo = nameOf.photo(sha256);
  const photographed = async (seed: number) => {
    const desk = await freshDesk(seed);
    const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
    await desk.store.keepPhoto({ sha256, mime: 'image/jpeg', bytes });
    const body = { sculpture: work.sculpture, sha256, mime: 'image/jpeg', bytes: 3, role: 'elevation' as const };
    const elevation = nameOf.elevation(desk.newId());
    const within = work.sculpture;
    const { commitChanges } = await import('../../src/actions');
    await done(
      commitChanges(desk, { code: 'deed: photo kept', params: {} }, [
        { thing: photo, kind: 'photo', within, body },
        { thing: elevation, kind: 'elevation', within, body: { sculpture: within, side: 'west', photo, order: 1 } },
      ]),
    );
    return { desk, elevation, work };
  };

  test('takes bytes and entry; what was drawn on it stays, and the reason can be read', async () => {
    const { desk, elevation, work } = await photographed(20);
    await done(erasePhoto(desk, photo, { reason: 'A passer-by' }));
    expect([await desk.store.photosHere(), await desk.store.current(photo)]).toEqual([[], undefined]);
    expect((await desk.store.current(elevation))?.gone).toBe(false);
    expect(await answered(erasedSoFar(desk))).toMatchObject([
      { of: 'photo', reason: 'A passer-by', day: '2026-10-15', within: work.sculpture, entries: 1 },
    ]);
    expect(readSurvey(new Uint8Array(await (await fileOf(desk)).arrayBuffer()))).toMatchObject({
      ok: true,
      keptAtHome: [],
    });
  });

  test('the same picture is not taken in again, by hand or by file, and the sentence says why', async () => {
    const { desk } = await photographed(21);
    const old = await fileOf(desk);
    await done(erasePhoto(desk, photo, { reason: 'A passer-by' }));
    await expect(desk.store.keepPhoto({ sha256, mime: 'image/jpeg', bytes })).rejects.toMatchObject({
      reason: { code: 'photo erased', params: { day: '2026-10-15', reason: 'A passer-by' } },
    });
    await carryIn(desk, old);
    expect(await desk.store.current(photo)).toBeUndefined();
  });

  test('the file preview says, before anything is done, that entries and bytes here will go', async () => {
    const { desk } = await photographed(22);
    const other = await freshDesk(23);
    await carryIn(other, await fileOf(desk));
    await other.store.keepPhoto({ sha256, mime: 'image/jpeg', bytes });
    await done(erasePhoto(desk, photo, { reason: 'A passer-by' }));
    const opened = await openSurveyFile(other, await fileOf(desk));
    expect(opened).toMatchObject({ ok: true, preview: { erased: { entries: 1, photos: 1 } } });
    if (!opened.ok) return;
    await done(acceptImport(other, opened.preview));
    expect(await other.store.photosHere()).toEqual([]);
  });

  test('without a reason, or of one that is not here, is refused', async () => {
    const { desk } = await photographed(24);
    expect(await code(erasePhoto(desk, photo, { reason: '' }))).toBe('erasing reason missing');
    expect(await code(erasePhoto(desk, `photo/${'cd'.repeat(32)}`, { reason: 'x' }))).toBe('not here');
  });
});
