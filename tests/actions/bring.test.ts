import { describe, expect, it } from 'vitest';
import {
  addInterpretation,
  daysOfPhotos,
  editTreatment,
  listText,
  recordTreatment,
  takeOverList,
  takeOverReport,
  undoLast,
  worksHere,
} from '../../src/actions';
import { photosOf } from '../../src/actions/photos/photosOfWork';
import { type Reading, readList, splitRows } from '../../src/engine/bring';
import { readSurvey, writeSurvey } from '../../src/engine/exchange';
import { nameOf } from '../../src/engine/record';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

const text = 'Work;Zone;Date;What\n7;A;12.5.2019;wax\nHeron;;spring 2020;wash\n7;B;before 2018;Cold wax\n';

const prepared = async (seed = 1) => {
  const desk = await freshDesk(seed);
  const work = await aWork(desk, { title: 'Heron', number: '7', areas: [1, 2] });
  const uses: Reading['uses'] = ['work', 'zones', 'date', 'type'];
  const reading: Reading = {
    uses,
    works: await worksHere(desk),
    workFor: {},
    typeFor: {},
    order: 'day first',
    today: desk.today(),
  };
  const rows = readList(splitRows(text).rows.slice(1), reading).flatMap(({ treatment }) => treatment ?? []);
  const logbook = async () => (await desk.store.within(work.sculpture, ['treatment'])).filter(({ gone }) => !gone);
  return { desk, work, rows, logbook };
};

describe('A list taken over', () => {
  it('is in the logbook as it was written, marked with the list it comes from', async () => {
    const { desk, rows, logbook } = await prepared();
    expect(await done(takeOverList(desk, rows, ' Wax book '))).toMatchObject({ taken: 3, here: 0 });
    const bodies = (await logbook()).map(({ lead }) => lead.body);
    expect(bodies.map(({ date }) => date).sort()).toEqual(['2019-05-12', 'before 2018', 'spring 2020']);
    expect(bodies.map(({ source }) => source)).toEqual(['Wax book', 'Wax book', 'Wax book']);
    const survey = writeSurvey(desk.collection, await desk.store.allEntries());
    expect(readSurvey(survey).ok, 'it can be carried').toBe(true);
  });

  it('is one deed: one undo takes all of it back, and it can be brought in again', async () => {
    const { desk, rows, logbook } = await prepared();
    await done(takeOverList(desk, rows, 'Wax book'));
    await done(undoLast(desk));
    expect(await logbook()).toEqual([]);
    expect(await done(takeOverList(desk, rows, 'Wax book'))).toMatchObject({ taken: 3, here: 0 });
    expect(await logbook()).toHaveLength(3);
  });

  it('adds nothing the second time, not even over what was corrected meanwhile', async () => {
    const { desk, rows, logbook } = await prepared();
    await done(takeOverList(desk, rows, 'Wax book'));
    const first = (await logbook())[0]!;
    await done(editTreatment(desk, first.thing, { note: 'the book is wrong' }));
    const before = await desk.store.allEntries();
    expect(await done(takeOverList(desk, rows, 'Wax book, copy'))).toMatchObject({ taken: 0, here: 3 });
    expect(await desk.store.allEntries()).toEqual(before);
  });

  it('does not double what was entered by hand: the same work, zones, day and sort', async () => {
    const { desk, work, rows } = await prepared();
    await done(recordTreatment(desk, work.sculpture, { zones: [work.zones[0]!], type: 'wax', date: '2019-05-12' }));
    expect(await done(takeOverList(desk, rows, 'Wax book'))).toMatchObject({ taken: 2, here: 1 });
  });

  it('is refused where it is not said where it comes from', async () => {
    const { desk, rows, logbook } = await prepared();
    expect(await takeOverList(desk, rows, ' ')).toMatchObject({ ok: false, reason: { code: 'source missing' } });
    expect(await takeOverList(desk, [], 'x')).toMatchObject({ ok: false, reason: { code: 'nothing to take over' } });
    expect(await logbook()).toEqual([]);
  });
});

describe('The text of a list', () => {
  // Without the characters of 0x80 to 0x9f: Node 20 reads those as Latin-1, browsers as Windows-1252.
  const ansi = new Uint8Array([0x4d, 0xfc, 0x6c, 0x6c, 0x65, 0x72, 0x20, 0xa7]);
  const utf16 = (little: boolean, mark: boolean) => {
    const units = [...(mark ? '\ufeff' : ''), ...'Müller;1'].map((c) => c.charCodeAt(0));
    return new Uint8Array(units.flatMap((u) => (little ? [u & 255, u >> 8] : [u >> 8, u & 255])));
  };
  it.each([
    ['UTF-8', new TextEncoder().encode('Müller €'), 'Müller €'],
    ['UTF-8', new TextEncoder().encode('\ufeffMüller'), 'Müller'],
    ['Windows-1252', ansi, 'Müller §'],
    ['UTF-16', utf16(true, true), 'Müller;1'],
    ['UTF-16', utf16(false, true), 'Müller;1'],
    ['UTF-16', utf16(true, false), 'Müller;1'],
  ])('is read in %s', async (encoding, bytes, said) => {
    expect(await done(listText(new Blob([bytes])))).toEqual({ ok: true, encoding, text: said });
  });

  it('is refused in a sentence where the file is far too large for a list', async () => {
    const large = new Blob([new Uint8Array(5_000_001)]);
    expect(await listText(large)).toMatchObject({ ok: false, reason: { code: 'list too large' } });
  });
});

describe('An earlier report taken over', () => {
  const report = { by: 'Conservator R.', date: 'before 1990', source: 'Report on the Heron' };
  it('stands as thoughts of its author, never as something seen, and once however often it is brought in', async () => {
    const { desk, work } = await prepared();
    await done(addInterpretation(desk, work.sculpture, { statement: 'Damp inside', by: 'me' }));
    const said = [{ statement: 'Wax thin', about: work.zones[0]! }, { statement: 'Armature rusting' }];
    expect(await done(takeOverReport(desk, work.sculpture, report, said))).toMatchObject({ taken: 2, here: 0 });
    expect(await done(takeOverReport(desk, work.sculpture, report, said))).toMatchObject({ taken: 0, here: 2 });
    const thoughts = await desk.store.within(work.sculpture, ['interpretation']);
    expect(thoughts.map(({ lead }) => [lead.body.statement, lead.body.date]).sort()).toEqual([
      ['Armature rusting', 'before 1990'],
      ['Damp inside', '2026-10-15'],
      ['Wax thin', 'before 1990'],
    ]);
    expect(await desk.store.within(work.sculpture, ['finding'])).toEqual([]);
  });
});

describe('Old photos', () => {
  it('are put together by the day the camera says, those without one last', async () => {
    const { desk, work } = await prepared();
    const round = await aRound(desk, work, '2019-05-12', ['nothing', 'nothing']);
    const rows = (await photosOf(desk, work.sculpture))!;
    const photo = (i: number, taken: string | undefined, within?: string) => ({
      photo: { thing: nameOf.photo(String(i)), body: { taken } },
      round: within,
    });
    const photos = [photo(1, undefined), photo(2, '2020-01-01T10:00:00'), photo(3, '2019-05-12T09:00:00', round)];
    const another = photo(4, '2019-05-12T10:00:00');
    const notBrought = photo(5, '2019-05-12T10:00:00');
    const work2 = { ...rows, photos: [...photos, another, notBrought] } as unknown as typeof rows;
    const brought = [1, 2, 3, 4].map((i) => nameOf.photo(String(i)));
    expect(daysOfPhotos(work2, brought)).toEqual([
      { day: '2019-05-12', photos: [nameOf.photo('3'), nameOf.photo('4')], round: undefined },
      { day: '2020-01-01', photos: [nameOf.photo('2')], round: '' },
      { day: '', photos: [nameOf.photo('1')], round: '' },
    ]);
  });
});
