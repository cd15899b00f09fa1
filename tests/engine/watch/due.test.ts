import { describe, expect, it } from 'vitest';
import type { Advice } from '../../../src/engine/hold';
import type { BodyOf } from '../../../src/engine/record';
import {
  addMonths,
  type DueKind,
  dueOfRecord,
  dueOfTripwires,
  duePlanned,
  dueStanding,
  type Lists,
  tripwiresStanding,
} from '../../../src/engine/watch';
import { tended, today } from '../hold/garden';
import { decision, factsOf, planned, wire, work, zoneA, zoneB } from './planned';

const none: Lists<DueKind> = {
  quote: [],
  bid: [],
  campaign: [],
  decision: [],
  groundsAgreement: [],
  product: [],
  move: [],
  task: [],
  incident: [],
  hotDay: [],
  gift: [],
  yearPlan: [],
};
const plannedDue = (lists: Partial<Lists<DueKind>>, day = today) => duePlanned({ ...none, ...lists }, day);
const money = { minor: 4_600_000, currency: 'EUR' };
const quote = (more: Partial<BodyOf<'quote'>> = {}) =>
  planned('quote', 'q', {
    sculpture: work,
    who: 'A foundry',
    what: 'Strip',
    amount: money,
    state: 'quote',
    date: '2026-03-01',
    validUntil: '2026-11-01',
    ...more,
  });

describe('months of the calendar', () => {
  it('keep the day, or take the last of a shorter month', () => {
    expect(addMonths('2026-01-31', 1)).toBe('2026-02-28');
    expect(addMonths('2024-01-31', 1)).toBe('2024-02-29');
    expect(addMonths('2023-09-22', 3)).toBe('2023-12-22');
    expect(addMonths('2026-10-15', -12)).toBe('2025-10-15');
  });
});

describe('what the surface asks for', () => {
  const advice = (zone: string, more: Partial<Advice>): Advice => ({
    zone,
    waxAgainBy: null,
    asksConservator: false,
    nextLook: null,
    ifCoated: null,
    past: false,
    expected: null,
    reasons: [],
    ...more,
  });
  const look = (day: string) => ({ nextLook: { day, low: null, high: null, reasons: [] } });
  const record = tended({
    zones: { A: {}, B: {} },
    rounds: [{ date: '2026-05-12', saw: { A: 'nothing', B: 'nothing' } }],
    looks: [{ date: '2026-08-06', result: 'clear' }],
  });
  const due = (list: readonly Advice[], yearPlans: readonly ReturnType<typeof plan>[] = [], of = record) =>
    dueOfRecord({ record: of, holds: [], advice: list }, { yearPlans, today });
  const plan = (year: number, row: Partial<BodyOf<'yearPlan'>['works'][number]>) =>
    planned('yearPlan', String(year), { year, works: [{ work, survey: 'full', waxes: 1, ...row }] });

  it('several zones of a work are one errand, on the day of the first; one far off is not in it', () => {
    const found = due([advice(zoneA, look('2026-10-20')), advice(zoneB, look('2026-10-27'))]);
    expect(found[0]).toMatchObject({ sort: 'look', day: '2026-10-20', zones: [zoneA, zoneB] });
    const apart = due([advice(zoneA, look('2026-10-20')), advice(zoneB, look('2027-03-01'))]);
    expect(apart[0]?.zones).toEqual([zoneA]);
  });

  it('its key stays while the wished day moves, and is another one when more was seen', () => {
    const key = (day: string, of = record) => due([advice(zoneA, look(day))], [], of)[0]?.key;
    expect(key('2026-10-20')).toBe(key('2026-10-27'));
    const more = tended({ zones: { A: {}, B: {} }, looks: [{ date: '2026-10-01', result: 'clear' }] });
    expect(key('2026-10-20', more)).not.toBe(key('2026-10-20'));
  });

  it('the next yearly round is due a year after the last, and a work never walked round is due today', () => {
    expect(due([]).map(({ sort, day }) => [sort, day])).toEqual([['round', '2027-05-12']]);
    expect(due([], [], tended({})).map(({ sort, day }) => [sort, day])).toEqual([['round', today]]);
  });

  it('her plan of the year goes before: its day, or no round at all', () => {
    expect(due([], [plan(2027, { day: '2027-04-20' })])[0]?.day).toBe('2027-04-20');
    expect(due([], [plan(2027, { survey: 'look' })])).toEqual([]);
    expect(due([], [plan(2026, { survey: 'none' })])[0]?.day).toBe('2027-05-12');
  });

  it('never asks to wax a zone on which the last round saw something to ask the conservator about', () => {
    const mounds = [{ kind: 'pale-powdery-mounds', count: 'two to five' }] as const;
    const saw = tended({ zones: { A: {}, B: {} }, rounds: [{ date: '2026-05-12', saw: { A: mounds, B: 'nothing' } }] });
    const wax = { waxAgainBy: { day: '2026-11-20', low: null, high: null } };
    const found = due([advice(zoneA, wax), advice(zoneB, wax)], [], saw);
    expect(found.find(({ sort }) => sort === 'wax')?.zones).toEqual([zoneB]);
  });

  it('a work that is away on loan is not looked at here, until it is back', () => {
    const loan = (back?: string) =>
      planned('move', 'm', {
        ...{ sculpture: work, sort: 'loan out', from: 'the quay', to: 'the hall', left: '2026-09-01' },
        ...(back ? { back } : {}),
      });
    const known = { record, holds: [], advice: [advice(zoneA, look('2026-10-20'))] };
    const sorts = (move: ReturnType<typeof loan>) =>
      dueOfRecord(known, { yearPlans: [], moves: [move], today }).map(({ sort }) => sort);
    expect(sorts(loan())).toEqual([]);
    expect(sorts(loan('2026-10-01'))).toEqual(['look', 'round']);
  });

  it('a danger that nobody closed is due from the day it was opened', () => {
    const open = planned('personCheck', 'p', { sculpture: work, what: 'A loose finger', opened: '2026-09-01' });
    const found = due([], [], { ...record, personChecks: [open] });
    expect(found[0]).toMatchObject({ sort: 'danger', day: '2026-09-01', ownEnd: true });
  });
});

describe('what was planned, promised or agreed', () => {
  it('a price is due on its last day, told of a month before; renewed or paid ones are not', () => {
    expect(plannedDue({ quote: [quote()] })[0]).toMatchObject({ sort: 'quote', day: '2026-11-01', from: '2026-10-02' });
    expect(plannedDue({ quote: [quote({ renewedBy: 'quote/r' })] })).toEqual([]);
    expect(plannedDue({ quote: [quote({ state: 'actual' })] })).toEqual([]);
    expect(plannedDue({ quote: [quote({ validUntil: '2026-10-01' })] })[0]?.reasons[0]?.code).toBe('due: quote ended');
  });

  it('a bid is watched until one is taken', () => {
    const bid = planned('bid', 'b', {
      sculpture: work,
      campaign: 'campaign/c',
      who: 'A foundry',
      date: '2026-06-01',
      validUntil: '2026-12-01',
      currency: 'EUR',
      lines: [],
    });
    const campaign = (more: object) =>
      planned('campaign', 'c', { sculpture: work, title: 'x', opened: '2026-01-01', step: 'bids', ...more });
    expect(plannedDue({ bid: [bid], campaign: [campaign({})] })).toHaveLength(1);
    expect(plannedDue({ bid: [bid], campaign: [campaign({ takenBid: 'bid/z' })] })).toEqual([]);
  });

  it('reviews, agreements, tins and loans, each on its day and only while it stands', () => {
    const agreement = planned('groundsAgreement', 'g', {
      who: { role: 'Head of grounds' },
      topic: 'sprinkler',
      text: 'West head moved',
      agreed: '2025-03-01',
      review: '2026-03-01',
    });
    const tin = planned('product', 't', {
      name: 'Paste wax',
      sort: 'wax',
      batch: 'W-26A',
      expires: '2027-01-31',
      left: 2,
    });
    const loan = planned('move', 'm', {
      sculpture: work,
      sort: 'loan out',
      from: 'the quay',
      to: 'the hall',
      left: '2026-02-01',
      backDue: '2026-12-01',
    });
    const found = plannedDue({
      decision: [decision({ review: '2026-11-20' })],
      groundsAgreement: [agreement],
      product: [tin],
      move: [loan],
    });
    expect(found.map(({ sort, day }) => [sort, day])).toEqual([
      ['review', '2026-11-20'],
      ['agreement', '2026-03-01'],
      ['product', '2027-01-31'],
      ['loan', '2026-12-01'],
    ]);
    const over = plannedDue({
      decision: [decision({ review: '2026-11-20', replacedBy: 'decision/n' })],
      groundsAgreement: [{ ...agreement, body: { ...agreement.body, ended: '2026-01-01' } }],
      product: [{ ...tin, body: { ...tin.body, left: 0 } }],
      move: [{ ...loan, body: { ...loan.body, back: '2026-10-01' } }],
    });
    expect(over).toEqual([]);
  });

  it('a task that comes again stands anew so many months after it was done', () => {
    const task = (more: object) => planned('task', 't', { what: 'Clear the weep hole', from: '2026-09-01', ...more });
    expect(plannedDue({ task: [task({})] })[0]).toMatchObject({ day: '2026-09-01', key: 'task/task/t' });
    expect(plannedDue({ task: [task({ done: { on: '2026-09-03' } })] })).toEqual([]);
    expect(plannedDue({ task: [task({ done: { on: '2026-09-03' }, every: 6 })] })[0]?.day).toBe('2027-03-03');
  });

  it('an incident with danger stands among the dangers, and a day of hot work that was not closed is told', () => {
    const incident = planned('incident', 'i', {
      date: '2026-10-01',
      sort: 'storm',
      what: 'A branch',
      danger: 'possible',
    });
    const hotDay = planned('hotDay', 'h', {
      sculpture: work,
      date: '2026-10-14',
      permit: '12',
      authorisedBy: { role: 'Fire officer' },
      clearZone: 11,
      checked: [],
      watchMinutes: 60,
    });
    expect(plannedDue({ incident: [incident], hotDay: [hotDay] }).map(({ sort }) => sort)).toEqual([
      'danger',
      'hot day',
    ]);
  });
});

describe('everything due, with what was answered', () => {
  const answer = (key: string, more: Partial<BodyOf<'dueAnswered'>>) =>
    planned('dueAnswered', key, { key, on: '2026-10-15', answer: 'done', ...more });
  const loose = planned('personCheck', 'p', { sculpture: work, what: 'A loose finger', opened: '2026-10-14' });
  const all = [
    ...plannedDue({ quote: [quote({ validUntil: '2026-10-01' })], decision: [decision({ review: '2026-11-20' })] }),
    ...dueOfRecord(
      { record: { ...tended({}), rounds: [], personChecks: [loose] }, holds: [], advice: [] },
      { yearPlans: [], today },
    ),
  ];
  const quoteKey = 'quote/quote/q';

  it('dangers first, then by day, and each says whether its day is past', () => {
    expect(dueStanding(all, [], today).due.map(({ sort, when }) => [sort, when])).toEqual([
      ['danger', 'over'],
      ['quote', 'over'],
      ['round', 'now'],
      ['review', 'later'],
    ]);
  });

  it('done and not needed are out of the list, and can be seen with their answer', () => {
    const { due, answered } = dueStanding(all, [answer(quoteKey, { answer: 'not needed' })], today);
    expect(due.map(({ sort }) => sort)).not.toContain('quote');
    expect(answered).toMatchObject([{ due: { key: quoteKey }, answer: { body: { answer: 'not needed' } } }]);
  });

  it('later comes back on its day, but never past the last day it can be done', () => {
    const put = (key: string, until: string) => dueStanding(all, [answer(key, { answer: 'later', until })], today).due;
    expect(put(quoteKey, '2026-11-05').find(({ key }) => key === quoteKey)).toMatchObject({
      day: '2026-11-05',
      when: 'soon',
      putOff: '2026-11-05',
    });
    const until = [{ ...all[0]!, until: '2026-10-20' }];
    expect(dueStanding(until, [answer(quoteKey, { answer: 'later', until: '2027-01-01' })], today).due[0]?.day).toBe(
      '2026-10-20',
    );
  });

  it('a danger to people is put off by no answer', () => {
    const danger = all.find(({ sort }) => sort === 'danger')!;
    expect(dueStanding(all, [answer(danger.key, {})], today).due[0]?.sort).toBe('danger');
  });

  it('a tripwire that surely went is due, one that perhaps went is not', () => {
    const grown = tended({
      rounds: [0.3, 0.6].map((cover, i) => ({
        date: `${2025 + i}-05-12`,
        saw: { A: [{ kind: 'green-spots', cover }] },
      })),
    });
    const at = (level: number) => {
      const watched = decision({ tripwires: [wire('green share over', { zone: zoneA, level })] });
      return dueOfTripwires(tripwiresStanding([watched], [], () => factsOf(grown), today));
    };
    expect(at(30)).toMatchObject([{ key: 'tripwire/decision/d1/t1/2026-05-12', day: '2026-05-12' }]);
    expect(at(57)).toEqual([]);
  });
});
