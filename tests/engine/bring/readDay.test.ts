import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { needsOrder, orderOf, readDay } from '../../../src/engine/bring';

const today = '2026-10-15';
const read = (text: string, order?: 'day first' | 'month first') => readDay(text, order, today);

describe('Reading a date of a list', () => {
  it.each([
    ['2019-05-12', '2019-05-12'],
    ['2019/5/2', '2019-05-02'],
    ['2019-05-12 00:00:00', '2019-05-12'],
    ['12 May 2019', '2019-05-12'],
    ['May 12th, 2019', '2019-05-12'],
    ['12. März 2019', '2019-03-12'],
    ['3. Mai 2019', '2019-05-03'],
    ['1. Okt. 2018', '2018-10-01'],
    ['24. Dezember 2018', '2018-12-24'],
    ['25/05/2019', '2019-05-25'],
    ['05/25/2019', '2019-05-25'],
    ['5.5.2019', '2019-05-05'],
    ['29.2.2020', '2020-02-29'],
  ])('%s is the day %s whatever the order', (text, day) => {
    expect(read(text)).toEqual({ date: day });
  });

  it('does not choose between the 3rd of April and the 4th of March: it asks', () => {
    expect(read('03/04/2019').problem?.code).toBe('bring: day order unclear');
    expect(read('03/04/2019', 'day first')).toEqual({ date: '2019-04-03' });
    expect(read('03/04/2019', 'month first')).toEqual({ date: '2019-03-04' });
  });

  it('says so where a day does not fit the order chosen, and does not turn it round in silence', () => {
    expect(read('05/25/2019', 'day first').problem?.code).toBe('bring: day not a day');
  });

  it('finds the order from the days that tell it, and none where they disagree', () => {
    expect(orderOf(['03/04/2019', '25/05/2019'])).toBe('day first');
    expect(orderOf(['03/04/2019', '05/25/2019'])).toBe('month first');
    expect(orderOf(['25/05/2019', '05/25/2019'])).toBeUndefined();
    expect(orderOf(['03/04/2019', '2019'])).toBeUndefined();
    expect(needsOrder(['2019', '25/05/2019', '4/4/2019'])).toBe(false);
    expect(needsOrder(['03/04/2019'])).toBe(true);
  });

  it.each(['spring 2019', 'before 2021', '2019', '05/2019', '2019-05', 'May 2019', '2019 to 2021', 'about 2018?'])(
    'keeps %s as vague as it is written',
    (text) => {
      expect(read(text)).toEqual({ date: text });
    },
  );

  it.each([
    ['', 'bring: day missing'],
    ['31.2.2019', 'bring: day not a day'],
    ['29.2.2019', 'bring: day not a day'],
    ['2019-13-01', 'bring: day not a day'],
    ['43597', 'bring: day a bare number'],
    ['2026-10-16', 'bring: day ahead'],
    ['2031', 'bring: day ahead'],
    [`${'long ago '.repeat(9)}2001`, 'bring: text too long'],
  ])('%j is not taken: %s', (text, code) => {
    expect(read(text)).toMatchObject({ problem: { code } });
    expect(read(text).date).toBeUndefined();
  });

  it('tells of a year in two figures how it was read, never as one to come', () => {
    expect(read('25.5.19')).toMatchObject({ date: '2019-05-25', remark: { code: 'bring: short year' } });
    expect(read('25.5.87')).toMatchObject({ date: '1987-05-25' });
    expect(read('25.5.26')).toMatchObject({ date: '2026-05-25' });
  });

  it('keeps words without a year, and says that no figure can use them', () => {
    expect(read('in spring')).toMatchObject({ date: 'in spring', remark: { code: 'bring: no year in it' } });
  });

  it('gives for any text a date or a problem, and a whole day only where there is such a day', () => {
    const unit = fc.constantFrom('0', '1', '2', '3', '9', '/', '.', '-', ' ', 'm', 'a', 'y');
    fc.assert(
      fc.property(
        fc.string({ unit, maxLength: 14 }),
        fc.constantFrom(undefined, 'day first' as const),
        (text, order) => {
          const { date, problem } = readDay(text, order, today);
          expect((date === undefined) !== (problem === undefined)).toBe(true);
          if (date && /^\d{4}-\d{2}-\d{2}$/.test(date))
            expect(new Date(`${date}T00:00:00Z`).toISOString().slice(0, 10)).toBe(date);
        },
      ),
      { seed: 7, numRuns: 5000 },
    );
  });
});
