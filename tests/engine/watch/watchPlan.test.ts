import { describe, expect, it, test } from 'vitest';
import { holdsOf } from '../../../src/engine/hold';
import { beganOf, didItHold, dueAfterTreatment, recallList, treatedOf, watchPlan } from '../../../src/engine/watch';
import { tended, today } from '../hold/garden';
import { planned, work, zoneA } from './planned';

const states = (marks: ReturnType<typeof watchPlan>) => marks.map(({ months, state }) => [months, state]);
const treated = { of: 'campaign/c', ended: '2023-09-22', zones: [] };

describe('the watch after a treatment', () => {
  it('asks for a look at 1, 3, 6, 12 and 24 months and then every year, as far as today reaches', () => {
    const marks = watchPlan(tended({}), treated, today);
    expect(marks.map(({ day }) => day)).toEqual([
      '2023-10-22',
      '2023-12-22',
      '2024-03-22',
      '2024-09-22',
      '2025-09-22',
      '2026-09-22',
      '2027-09-22',
    ]);
    expect(states(marks)).toEqual([
      [1, 'missed'],
      [3, 'missed'],
      [6, 'missed'],
      [12, 'missed'],
      [24, 'missed'],
      [36, 'due'],
      [48, 'to come'],
    ]);
  });

  it('lets every day after the treatment belong to one look and no more', () => {
    const marks = watchPlan(tended({}), treated, '2031-01-01');
    for (const [i, { until }] of marks.entries()) {
      const next = marks[i + 1];
      if (next) expect(Date.parse(next.from) - Date.parse(until)).toBe(86_400_000);
    }
  });

  it('is done by a finished round or a look in its time, and an incident round is none', () => {
    const record = tended({
      rounds: [
        { date: '2023-10-20', type: 'incident', saw: { A: 'nothing' } },
        { date: '2024-05-14', saw: { A: 'nothing' } },
      ],
      looks: [{ date: '2023-12-20', result: 'clear' }],
    });
    expect(states(watchPlan(record, treated, '2024-06-01'))).toEqual([
      [1, 'missed'],
      [3, 'done'],
      [6, 'done'],
      [12, 'to come'],
    ]);
  });

  it('a look at a zone that was not treated does not count', () => {
    const record = tended({ zones: { A: {}, B: {} }, looks: [{ zone: 'B', date: '2023-10-22', result: 'clear' }] });
    expect(watchPlan(record, { ...treated, zones: [zoneA] }, '2023-12-01')[0]?.state).toBe('missed');
    expect(watchPlan(record, treated, '2023-12-01')[0]?.state).toBe('done');
  });
});

const campaign = (more: object = {}) =>
  planned('campaign', 'c', {
    sculpture: work,
    title: 'Strip and patina',
    opened: '2023-05-09',
    step: 'watch',
    began: '2023-09-04',
    ended: '2023-09-22',
    accepted: '2023-11-22',
    warrantyUntil: '2026-11-22',
    warrantyWho: 'Foundry team',
    ...more,
  });
const strip = [
  { type: 'strip', date: '2023-09-04' },
  { type: 'repatination', date: '2023-09-18' },
  { type: 'wax', date: '2023-09-21' },
];

describe('what a finished treatment asks for', () => {
  const due = (record: ReturnType<typeof tended>, day = today, more: object = {}) =>
    dueAfterTreatment(record, [campaign(more)], day);
  const sorts = (rows: ReturnType<typeof due>) => rows.map(({ sort, day }) => [sort, day]);

  it('one look 60 days before the warranty ends', () => {
    const found = due(tended({ treatments: strip, rounds: [{ date: '2026-05-12', saw: { A: 'nothing' } }] }));
    expect(sorts(found)).toEqual([
      ['watch', '2027-09-22'],
      ['warranty', '2026-09-23'],
    ]);
    expect(found[1]).toMatchObject({ from: '2026-08-24', until: '2026-11-22', key: 'warranty/campaign/c/2026-11-22' });
  });

  it('which a round in its time answers, or looks at every zone, and not a look at one of two', () => {
    const two = { zones: { A: {}, B: {} }, treatments: strip };
    const look = (zone: string) => ({ zone, date: '2026-10-01', result: 'clear' as const });
    const isDue = (record: ReturnType<typeof tended>) => due(record).some(({ sort }) => sort === 'warranty');
    expect(isDue(tended(two))).toBe(true);
    expect(isDue(tended({ ...two, looks: [look('A')] }))).toBe(true);
    expect(isDue(tended({ ...two, looks: [look('A'), look('B')] }))).toBe(false);
    const leftOut = { date: '2026-09-20', type: 'autumn', saw: { A: 'nothing', B: 'not looked' } } as const;
    expect(isDue(tended({ ...two, rounds: [leftOut] }))).toBe(true);
    expect(isDue(tended({ ...two, rounds: [{ date: '2026-09-20', saw: { A: 'nothing', B: 'nothing' } }] }))).toBe(
      false,
    );
  });

  it('nothing more once the warranty is over: too late is not due', () => {
    expect(due(tended({ treatments: strip }), '2026-11-23').some(({ sort }) => sort === 'warranty')).toBe(false);
  });

  it('one watch for a campaign of several steps, and for a treatment outside of any campaign', () => {
    expect(treatedOf(tended({ treatments: strip }), [campaign()])).toEqual([
      { of: 'campaign/c', ended: '2023-09-22', zones: [] },
    ]);
    const alone = treatedOf(tended({ treatments: strip }), []);
    expect(alone.map(({ ended }) => ended)).toEqual(['2023-09-18']);
    expect(treatedOf(tended({ treatments: [{ type: 'cause removed', date: '2023-07-11' }] }), [])).toEqual([]);
  });

  it('leaves the watch of an earlier treatment to the later one', () => {
    const twice = [...strip, { type: 'strip', date: '2025-09-04' }];
    const found = dueAfterTreatment(tended({ treatments: twice }), [campaign({ warrantyUntil: undefined })], today);
    expect(found).toHaveLength(1);
    expect(found[0]?.reasons[0]?.params.date).toBe('2025-09-04');
  });

  it('tells whom to call back while the warranty runs, and for which zones', () => {
    const record = tended({
      treatments: strip,
      looks: [
        { date: '2023-09-30', result: 'clear' },
        { date: '2024-10-10', result: 'clear' },
        { date: '2024-12-05', result: 'green' },
      ],
    });
    const holds = holdsOf(record, today);
    expect(recallList([campaign()], () => holds, today)).toMatchObject([
      { who: 'Foundry team', until: '2026-11-22', zones: [{ zone: zoneA, firstSeen: '2024-12-05' }] },
    ]);
    expect(recallList([campaign()], () => holds, '2026-12-01')).toEqual([]);
  });
});

test('nobody is called back for what was seen while the work was still going on', () => {
  const record = tended({
    treatments: [strip[0]!, { type: 'wax', date: '2023-09-05' }],
    looks: [
      { date: '2023-09-07', result: 'clear' },
      { date: '2023-09-20', result: 'green' },
    ],
  });
  const holds = holdsOf(record, today);
  expect(holds[0]?.holds).toHaveLength(1);
  expect(recallList([campaign()], () => holds, today)[0]?.zones).toEqual([]);
});

describe('did it hold?', () => {
  const waxes = ['2021-05-20', '2022-05-19', '2023-05-25'].map((date) => ({ type: 'wax', date }));
  const wasGreen = ['2021-08-01', '2022-08-01', '2023-07-30'].map((date) => ({ date, result: 'green' as const }));
  const wasClear = ['2021-05-28', '2022-05-27', '2023-06-02'].map((date) => ({ date, result: 'clear' as const }));
  const after = (...looks: readonly (readonly [string, 'clear' | 'green'])[]) => {
    const record = tended({
      treatments: [...waxes, ...strip],
      looks: [...wasClear, ...wasGreen, ...looks.map(([date, result]) => ({ date, result }))].sort((a, b) =>
        a.date < b.date ? -1 : 1,
      ),
    });
    return didItHold(holdsOf(record, today), treated, '2023-09-04')[0];
  };

  it('longer, where its interval lies past all that were before', () => {
    const held = after(['2023-09-30', 'clear'], ['2024-10-10', 'clear'], ['2024-12-05', 'green']);
    expect(held).toMatchObject({ zone: zoneA, word: 'longer' });
    expect(held?.since?.low).toBeCloseTo(12.6, 1);
    expect(held?.since?.high).toBeCloseTo(14.5, 1);
    expect(held?.before.map(({ start }) => start)).toEqual(['2023-05-25', '2022-05-19', '2021-05-20']);
  });

  it('shorter, where it came back sooner than it ever did before', () => {
    const long = tended({
      treatments: [{ type: 'wax', date: '2021-05-20' }, ...strip],
      looks: [
        { date: '2021-05-28', result: 'clear' },
        { date: '2021-11-28', result: 'clear' },
        { date: '2021-12-20', result: 'green' },
        { date: '2023-09-30', result: 'clear' },
        { date: '2023-10-20', result: 'green' },
      ],
    });
    expect(didItHold(holdsOf(long, today), treated, '2023-09-04')[0]?.word).toBe('shorter');
  });

  it('not sure, too early: never more than the looks tell', () => {
    expect(after(['2023-09-30', 'clear'], ['2023-10-20', 'green'])?.word).toBe('not sure');
    expect(after(['2023-09-30', 'clear'])?.word).toBe('too early');
    expect(after()?.word).toBe('nothing to compare');
  });

  it('says so where there is nothing before to set beside it', () => {
    const record = tended({ treatments: strip, looks: [{ date: '2023-09-30', result: 'clear' }] });
    expect(didItHold(holdsOf(record, today), treated, '2023-09-04')[0]?.word).toBe('nothing to compare');
  });
});

describe('the first day of a campaign’s work', () => {
  const campaign = (days: { readonly began?: string; readonly ended?: string }) =>
    planned('campaign', 'c', { sculpture: work, title: 'Strip', opened: '2024-11-21', step: 'watch', ...days });
  const record = tended({
    treatments: [
      { type: 'wax', date: '2025-05-22' },
      { type: 'strip', date: '2027-06-10' },
      { type: 'repatination', date: '2027-06-18' },
    ],
  });

  it('is as said, else the first treatment in its time that ends a series, and not the day it was opened years before', () => {
    expect(beganOf(record, campaign({ began: '2027-06-08', ended: '2027-06-20' }))).toBe('2027-06-08');
    expect(beganOf(record, campaign({ ended: '2027-06-20' }))).toBe('2027-06-10');
    expect(beganOf(record, campaign({ ended: '2027-06-01' }))).toBe('2027-06-01');
    expect(beganOf(record, campaign({}))).toBe('2027-06-10');
  });
});
