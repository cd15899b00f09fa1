import { describe, expect, it } from 'vitest';
import {
  idOfTreatment,
  namesColumns,
  proposedUses,
  type Reading,
  readList,
  splitRows,
  statementsIn,
} from '../../../src/engine/bring';

const works = [
  {
    thing: 'sculpture/1',
    number: '7',
    title: 'Heron',
    zones: [
      { thing: 'zone/a', letter: 'A', name: 'Head and neck' },
      { thing: 'zone/b', letter: 'B', name: 'Wings' },
    ],
  },
  { thing: 'sculpture/2', number: '8', title: 'Deer', zones: [] },
  { thing: 'sculpture/3', number: '9', title: 'Deer', zones: [] },
];
const reading = (given: Partial<Reading> = {}): Reading => ({
  uses: ['work', 'zones', 'date', 'type', 'product', 'coats', 'by', 'note'],
  works,
  workFor: {},
  typeFor: {},
  today: '2026-10-15',
  ...given,
});
const rowsOf = (text: string) => splitRows(text, ',').rows;
const read = (text: string, given?: Partial<Reading>) => readList(rowsOf(text), reading(given));
const codes = (text: string, given?: Partial<Reading>) =>
  read(text, given).map(({ problems }) => problems.map(({ code }) => code));

describe('Reading a list of treatments', () => {
  it('takes a row as it is written: work by number or title, zones by letter or name', () => {
    expect(read('7,"A, wings",12 May 2019,Cold wax,a clear wax,2,the garden,in the sun')[0]?.treatment).toEqual({
      sculpture: 'sculpture/1',
      zones: ['zone/a', 'zone/b'],
      type: 'wax',
      date: '2019-05-12',
      product: 'a clear wax',
      coats: 2,
      by: 'the garden',
      note: 'in the sun',
    });
    expect(read('hERON,head and neck,2019,wash,,,,')[0]?.treatment?.zones).toEqual(['zone/a']);
    expect(read('Heron,,2019,wash,,,,')[0]?.treatment).toEqual({
      sculpture: 'sculpture/1',
      zones: [],
      type: 'wash',
      date: '2019',
    });
  });

  it('never guesses a work: not a title that is nearly right, not one of two of the same title', () => {
    expect(codes('Herons,,2019,wash,,,,\nDeer,,2019,wash,,,,\n,,2019,wash,,,,')).toEqual([
      ['bring: work not known'],
      ['bring: work unclear'],
      ['bring: work missing'],
    ]);
    const chosen = read('Herons,,2019,wash,,,,', { workFor: { herons: 'sculpture/1' } });
    expect(chosen[0]?.treatment?.sculpture).toBe('sculpture/1');
  });

  it('never guesses what was done: a word that is no row of the trade is asked', () => {
    expect(codes('7,,2019,maintenance,,,,')).toEqual([['bring: sort not chosen']]);
    expect(read('7,,2019,Maintenance,,,,', { typeFor: { maintenance: 'wash' } })[0]?.treatment?.type).toBe('wash');
  });

  it('says everything that is wrong with a row at once, and takes none of it', () => {
    const [row] = read('7,Q,31.2.2019,polish,,,,');
    expect(row?.problems.map(({ code }) => code)).toEqual([
      'bring: zone not known',
      'bring: day not a day',
      'bring: sort not chosen',
    ]);
    expect(row?.treatment).toBeUndefined();
  });

  it('loses no text: what is no number of coats goes into the note, and so does every column given to it', () => {
    const [row] = read('7,,2019,wax,,several,,cloudy', {});
    expect(row?.treatment).toMatchObject({ note: 'cloudy\nseveral' });
    expect(row?.treatment).not.toHaveProperty('coats');
    expect(row?.remarks.map(({ code }) => code)).toEqual(['bring: coats not read']);
    const noted = read('7,x,2019,wax,,,,y', {
      uses: ['work', 'note', 'date', 'type', 'leave', 'leave', 'leave', 'note'],
    });
    expect(noted[0]?.treatment?.note).toBe('x\ny');
  });

  it('takes what one line says twice only once, and names the line', () => {
    const rows = read('7,"A,B",2019,wax,,,,\n8,,2019,wax,,,,\nHeron,"B,A",2019,Cold wax,,,,');
    expect(rows.map(({ treatment }) => treatment !== undefined)).toEqual([true, true, false]);
    expect(rows[2]?.problems).toEqual([{ code: 'bring: row twice', params: { line: 1 } }]);
  });

  it('reads short rows, and lists without a column of works or of sorts', () => {
    const rows = read('2019\n2020,by hand', {
      uses: ['date', 'note'],
      workForAll: 'sculpture/2',
      typeForAll: 'wax',
    });
    expect(rows.map(({ treatment }) => treatment?.date)).toEqual(['2019', '2020']);
    expect(codes('2019', { uses: ['date'] })).toEqual([['bring: work missing', 'bring: sort missing']]);
  });
});

describe('Proposing what a column is', () => {
  it('by its heading, each use once; a heading that says nothing goes into the note', () => {
    expect(proposedUses(['Inv. no', 'Title', 'Date waxed', 'Treatment', 'Wax used', 'Weather'])).toEqual([
      'work',
      'note',
      'date',
      'type',
      'product',
      'note',
    ]);
  });

  it('takes a first row for headings only where it reads like some', () => {
    expect(namesColumns(['Sculpture', 'Date'])).toBe(true);
    expect(namesColumns(['Heron', '2019-05-12', 'wax'])).toBe(false);
  });
});

describe('Statements of an earlier report', () => {
  it('are its lines, without the marks of a list, each once', () => {
    expect(statementsIn('1. Wax was thin.\r\n\r\n- Green under the arm\n• Wax was thin.\n1987 repair seen\n')).toEqual([
      'Wax was thin.',
      'Green under the arm',
      '1987 repair seen',
    ]);
  });
});

describe('The name of what is brought in', () => {
  it('is the same on every tablet and in any order of zones, so that a list brought in twice apart counts once', () => {
    const row = { sculpture: 'sculpture/1', zones: ['zone/a', 'zone/b'], type: 'wax', date: '2019' };
    expect(idOfTreatment(row)).toBe(idOfTreatment({ ...row, zones: ['zone/b', 'zone/a'] }));
    expect(idOfTreatment(row)).toMatch(/^brought-[0-9a-f]{32}$/);
    expect(idOfTreatment({ ...row, note: 'x' })).not.toBe(idOfTreatment({ ...row, by: 'x' }));
  });

  it('is another one for each of 50,000 rows that differ in a figure', () => {
    const row = { sculpture: 'sculpture/1', zones: [], type: 'wax', date: '2019' };
    const names = Array.from({ length: 50_000 }, (_, i) => idOfTreatment({ ...row, note: `row ${i}` }));
    expect(new Set(names).size).toBe(names.length);
  });
});
