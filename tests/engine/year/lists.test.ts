import { describe, expect, it } from 'vitest';
import { closeDownSteps, exposures, yearVerdicts } from '../../../src/engine/trade';
import {
  agreementRefused,
  closeDownOf,
  type DayOfWork,
  incidentRefused,
  isAway,
  liftsOf,
  moveRefused,
  packingOf,
  roundsOfMove,
  sitePlanRefused,
  yearPlanRefused,
  yearVerdictRefused,
} from '../../../src/engine/year';
import { aZone, thing, work } from './invented';

const day = (given: Partial<DayOfWork> = {}): DayOfWork => ({
  ...{ work, zones: [aZone('A')], survey: 'full', wash: false, wax: false },
  ...{ stations: 3, squares: 2, inserts: 0, access: false },
  ...given,
});
const ids = (days: readonly DayOfWork[]) => packingOf(days).map(({ id }) => id);

describe('The packing list', () => {
  it('holds what the day’s works ask for, and counts cards', () => {
    const list = packingOf([day(), day({ work: 'sculpture/w2', stations: 2 })]);
    expect(list.find(({ id }) => id === 'station-cards')).toMatchObject({ count: 5, works: [work, 'sculpture/w2'] });
    expect(list.map(({ id }) => id)).toEqual(expect.arrayContaining(['tablet', 'spray', 'zone-cards', 'square-cards']));
    expect(list.map(({ id }) => id)).not.toEqual(expect.arrayContaining(['ladder']));
  });

  it.each([
    ['ladder', { zones: [aZone('A', { reach: 'ladder' })] }],
    ['lift', { zones: [aZone('A', { reach: 'scaffold' })] }],
    ['water', { zones: [aZone('A', { exposure: ['waterline'] })] }],
    ['water', { water: 0.4 }],
    ['product', { wax: true }],
    ['hose', { wash: true }],
    ['insert-pads', { inserts: 2 }],
    ['access', { access: true }],
  ] as const)('asks for %s only where the day does', (id, given) => {
    expect(ids([day(given)])).toContain(id);
    expect(ids([day()])).not.toContain(id);
  });

  it('for a look from the ground carries no ladder and no cards', () => {
    const list = ids([day({ survey: 'look', zones: [aZone('A', { reach: 'ladder' })] })]);
    expect(list).toContain('binoculars');
    expect(list).not.toContain('ladder');
    expect(list).not.toContain('station-cards');
  });

  it('is empty where no work is visited', () => {
    expect(packingOf([])).toEqual([]);
  });
});

describe('The winter close-down', () => {
  it('names each step at each work it belongs to, under a key of its own', () => {
    const basin = { work, zones: [aZone('A', { exposure: ['waterline', 'tree'] })], inserts: 1 };
    const lawn = { work: 'sculpture/w2', zones: [aZone('A', { exposure: ['sprinkler'] })], inserts: 0 };
    const list = closeDownOf([basin, lawn]);
    const at = (id: string) => list.filter((step) => step.id === id).map((step) => step.work);
    expect(at('weep-holes')).toEqual([work, 'sculpture/w2']);
    expect(at('basin')).toEqual([work]);
    expect(at('inserts')).toEqual([work]);
    expect(at('sprinklers')).toEqual(['sculpture/w2']);
    expect(at('store')).toEqual([undefined]);
    expect(new Set(list.map(({ key }) => key)).size).toBe(list.length);
  });
});

describe('Rounds before and after a move', () => {
  const round = (id: string, date: string) => thing('round', id, { sculpture: work, date, type: 'annual' });
  const loan = (given: object = {}) =>
    thing('move', '1', { sculpture: work, sort: 'loan out', from: 'quay', to: 'hall', left: '2026-02-01', ...given });

  it('are the nearest within two months; an older one tells nothing of how it left', () => {
    const rounds = [round('old', '2025-05-10'), round('near', '2026-01-20'), round('after', '2026-04-03')];
    const told = roundsOfMove(loan({ back: '2026-04-01' }), rounds, '2026-05-01');
    expect(told.before?.thing).toBe('round/near');
    expect(told.after?.thing).toBe('round/after');
    expect(roundsOfMove(loan(), [round('old', '2025-05-10')], '2026-05-01').before).toBeNull();
  });

  it('one after is due from the day it is back, not while it is away', () => {
    expect(roundsOfMove(loan({ back: '2026-04-01' }), [], '2026-04-02').afterDue).toBe(true);
    expect(roundsOfMove(loan(), [], '2026-04-02').afterDue).toBe(false);
    expect(roundsOfMove(loan({ sort: 'loan in' }), [], '2026-04-02').afterDue).toBe(true);
  });

  it('a work is away until the day it is back', () => {
    expect(isAway(loan({ back: '2026-04-01' }), '2026-03-31')).toBe(true);
    expect(isAway(loan({ back: '2026-04-01' }), '2026-04-01')).toBe(false);
    expect(isAway(loan(), '2026-01-31')).toBe(false);
    expect(isAway(loan({ sort: 'loan in' }), '2026-03-01')).toBe(false);
    expect(isAway(loan({ sort: 'move' }), '2026-03-01')).toBe(false);
  });
});

describe('Lift days', () => {
  const euros = (minor: number) => ({ minor, currency: 'EUR' });
  it('are summed, and a work that needs one on a day without is named', () => {
    const row = (id: string, on?: string) => ({
      work: id,
      survey: 'full' as const,
      waxes: 1,
      lift: true as const,
      ...(on ? { day: on } : {}),
    });
    const plan = {
      year: 2026,
      works: [row('sculpture/a', '2026-05-12'), row('sculpture/b', '2026-05-13'), row('sculpture/c')],
      liftDays: [{ day: '2026-05-12', cost: euros(38000) }, { day: '2026-05-14' }],
    };
    expect(liftsOf(plan)).toEqual({ days: 2, cost: [euros(38000)], unpriced: 1, notBooked: ['sculpture/b'] });
    expect(liftsOf({ year: 2026, works: [row('sculpture/c')] }).notBooked).toEqual(['sculpture/c']);
  });
});

describe('What is kept', () => {
  const euros = (minor: number) => ({ minor, currency: 'EUR' });
  const plan = { year: 2026, works: [{ work, survey: 'full' as const, waxes: 1, day: '2026-05-12' }] };
  const agreement = { who: { role: 'Gardener' }, topic: 'salt', text: 'No salt', agreed: '2026-10-01' };
  const move = { sculpture: work, sort: 'loan out' as const, from: 'quay', to: 'hall', left: '2026-02-01' };
  const incident = { date: '2026-02-01', sort: 'storm', what: 'A branch', danger: 'none' as const };

  it('is kept as it is where nothing stands against it', () => {
    expect(
      yearPlanRefused({ ...plan, liftDays: [{ day: '2026-05-12', cost: euros(1) }], budget: euros(2) }),
    ).toBeUndefined();
    expect(agreementRefused({ ...agreement, review: '2027-10-01' })).toBeUndefined();
    expect(moveRefused({ ...move, backDue: '2026-04-01' })).toBeUndefined();
    expect(incidentRefused({ ...incident, closed: { on: '2026-02-01' } })).toBeUndefined();
    expect(sitePlanRefused({ spots: [{ work, x: 0, y: 0 }] })).toBeUndefined();
  });

  it.each([
    [
      'a day of another year',
      yearPlanRefused({ ...plan, works: [{ ...plan.works[0]!, day: '2027-05-12' }] }),
      'year: day outside the year',
    ],
    [
      'a lift day of another year',
      yearPlanRefused({ ...plan, liftDays: [{ day: '2025-05-12' }] }),
      'year: day outside the year',
    ],
    ['a work twice', yearPlanRefused({ ...plan, works: [...plan.works, ...plan.works] }), 'year: work twice'],
    [
      'two currencies',
      yearPlanRefused({
        ...plan,
        budget: euros(1),
        liftDays: [{ day: '2026-05-12', cost: { minor: 1, currency: 'CHF' } }],
      }),
      'money: currencies mixed',
    ],
    [
      'a price below nothing',
      yearPlanRefused({ ...plan, liftDays: [{ day: '2026-05-12', cost: euros(-1) }] }),
      'money: below nothing',
    ],
    [
      'an agreement reviewed before it was made',
      agreementRefused({ ...agreement, review: '2026-09-01' }),
      'year: dates out of order',
    ],
    ['an agreement with nobody', agreementRefused({ ...agreement, who: { role: ' ' } }), 'year: name missing'],
    ['an agreement that says nothing', agreementRefused({ ...agreement, text: ' ' }), 'year: text missing'],
    ['a work back before it left', moveRefused({ ...move, back: '2026-01-01' }), 'year: dates out of order'],
    ['a move to nowhere', moveRefused({ ...move, to: '' }), 'year: text missing'],
    [
      'an incident closed before it happened',
      incidentRefused({ ...incident, closed: { on: '2026-01-31' } }),
      'year: dates out of order',
    ],
    ['an incident without a word', incidentRefused({ ...incident, what: ' ' }), 'year: text missing'],
    [
      'one work in two places',
      sitePlanRefused({
        spots: [
          { work, x: 0, y: 0 },
          { work, x: 1, y: 1 },
        ],
      }),
      'year: work twice',
    ],
    [
      'a verdict by nobody',
      yearVerdictRefused({ sculpture: work, year: 2026, verdict: 'hold', why: 'x', by: '', date: '2026-11-01' }),
      'year: name missing',
    ],
  ])('is refused with a sentence: %s', (_, reason, code) => {
    expect(reason?.code).toBe(code);
  });
});

it('every verdict a person can say has its row, and every exposure the winter list asks for is one', () => {
  expect(yearVerdicts.map(({ id }) => id)).toEqual(['hold', 'watch', 'treat locally', 'ask a conservator', 'campaign']);
  const known = new Set(exposures.map(({ id }) => id));
  const asked = closeDownSteps.map((step) => step.for);
  const ofTheWork = ['every work', 'garden', 'basin', 'inserts'];
  expect(asked.filter((one) => !ofTheWork.includes(one)).every((one) => known.has(one))).toBe(true);
});
