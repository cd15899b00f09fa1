import { describe, expect, it } from 'vitest';
import { kinds } from '../../../src/engine/trade';
import { evaluateTripwire, stopWordsSeen, stopWordsStanding, tripwiresStanding } from '../../../src/engine/watch';
import { mays, tended, today, waxed } from '../hold/garden';
import { decision, factsOf, noMoney, planned, wire, work, zoneA, zoneB } from './planned';

const looks = (...rows: readonly (readonly [string, 'clear' | 'green'])[]) =>
  rows.map(([date, result]) => ({ date, result }));

describe('a tripwire on how long the wax holds', () => {
  const twoYears = waxed('2025-05-22', '2026-05-21');
  const overSix = wire('hold over', { zone: zoneA, level: 6, times: 2 });

  it('goes when both seasons since the decision lie over the level as a whole', () => {
    const record = tended({
      treatments: twoYears,
      looks: looks(['2025-05-30', 'clear'], ['2025-12-10', 'clear'], ['2026-05-29', 'clear'], ['2026-12-01', 'clear']),
    });
    const state = evaluateTripwire(overSix, factsOf(record, noMoney, '2026-12-10'), '2024-11-20', '2026-12-10');
    expect(state.word).toBe('met');
    // Six months after the second coating it was surely over the level.
    expect(state.since).toBe('2026-11-20');
  });

  it('does not go while an interval reaches across the level, however likely it is', () => {
    const record = tended({
      treatments: twoYears,
      looks: looks(['2025-05-30', 'clear'], ['2025-11-10', 'clear'], ['2026-05-12', 'green'], ['2026-05-29', 'clear']),
    });
    const state = evaluateTripwire(overSix, factsOf(record), '2024-11-20', today);
    expect(state.word).toBe('not met');
    expect(state.reasons.map(({ code }) => code)).toContain('tripwire: hold between');
  });

  it('does not count a season from before the decision: that was known then', () => {
    const record = tended({
      treatments: waxed('2023-05-22', '2024-05-21', '2025-05-22'),
      looks: looks(
        ['2023-05-30', 'clear'],
        ['2023-12-10', 'clear'],
        ['2024-05-29', 'clear'],
        ['2024-12-01', 'clear'],
        ['2025-05-30', 'clear'],
        ['2025-12-10', 'clear'],
      ),
    });
    expect(evaluateTripwire(overSix, factsOf(record), '2025-01-01', today).word).toBe('not met');
    expect(evaluateTripwire(overSix, factsOf(record), '2023-01-01', today).word).toBe('met');
  });

  it('does not count what held before the surface was made another one', () => {
    const record = tended({
      treatments: [...waxed('2024-05-21', '2025-05-22'), { type: 'strip', date: '2026-04-01' }, ...waxed('2026-05-21')],
      looks: looks(
        ['2024-05-29', 'clear'],
        ['2024-12-01', 'clear'],
        ['2025-05-30', 'clear'],
        ['2025-12-10', 'clear'],
        ['2026-05-29', 'clear'],
      ),
    });
    expect(evaluateTripwire(overSix, factsOf(record), '2024-01-01', today).word).toBe('not met');
  });

  it('a season that fell short in between breaks the row', () => {
    const record = tended({
      treatments: waxed('2023-05-22', '2024-05-21', '2025-05-22'),
      looks: looks(
        ['2023-05-30', 'clear'],
        ['2023-12-10', 'clear'],
        ['2024-05-29', 'clear'],
        ['2024-08-01', 'green'],
        ['2025-05-30', 'clear'],
        ['2025-12-10', 'clear'],
      ),
    });
    const state = evaluateTripwire(overSix, factsOf(record), '2023-01-01', today);
    expect(state.word).toBe('not met');
    expect(state.reasons.at(-1)).toEqual({ code: 'tripwire: seasons seen', params: { seen: 1, times: 2 } });
  });

  it('tells holds that are too short by the day the green was first seen', () => {
    const record = tended({
      treatments: twoYears,
      looks: looks(
        ['2025-05-30', 'clear'],
        ['2025-07-03', 'clear'],
        ['2025-08-14', 'green'],
        ['2026-05-29', 'clear'],
        ['2026-07-02', 'clear'],
        ['2026-08-06', 'green'],
      ),
    });
    const under = wire('hold under', { zone: zoneA, level: 3, times: 2 });
    expect(evaluateTripwire(under, factsOf(record), '2024-11-20', today)).toMatchObject({
      word: 'met',
      since: '2026-08-06',
    });
  });

  it('cannot tell where no hold is known, and never calls that "not met"', () => {
    const state = evaluateTripwire(overSix, factsOf(tended({})), '2024-11-20', today);
    expect(state.word).toBe('cannot tell');
  });
});

describe('a tripwire on what a round saw', () => {
  const grown = tended({ rounds: mays(2024, 0.1, 0.3, 0.6) });

  it('is met where the whole range lies over the line, perhaps met where only the figure does', () => {
    const share = (level: number) =>
      evaluateTripwire(wire('green share over', { zone: zoneA, level }), factsOf(grown), '2024-11-20', today);
    expect(share(30)).toMatchObject({ word: 'met', since: '2026-05-12' });
    expect(share(57).word).toBe('perhaps');
    expect(share(75).word).toBe('not met');
  });

  it('reads square metres of the whole work or of one zone', () => {
    const facts = factsOf(tended({ zones: { A: { m2: 2 }, B: { m2: 4 } }, rounds: mays(2025, 0.1, 0.6) }));
    const over = (level: number, zone?: string) =>
      evaluateTripwire(wire('green over', { level, ...(zone ? { zone } : {}) }), facts, '2025-11-20', today).word;
    expect(over(0.7)).toBe('met');
    expect(over(0.7, zoneA)).toBe('met');
    expect(over(3, zoneA)).toBe('not met');
    expect(over(0.7, 'zone/B')).toBe('cannot tell');
  });

  it('does not call the whole work "not met" by a round that left zones out, unless those could not change it', () => {
    const saw = { A: [{ kind: 'green-spots', cover: 0.1 }], B: 'not looked' } as const;
    const facts = factsOf(tended({ zones: { A: { m2: 2 }, B: { m2: 4 } }, rounds: [{ date: '2026-05-12', saw }] }));
    const at = (sort: string, level: number) =>
      evaluateTripwire(wire(sort, { level }), facts, '2025-11-20', today).word;
    expect(at('green over', 3)).toBe('cannot tell');
    expect(at('green over', 5)).toBe('not met');
    expect(at('green over', 0.05)).toBe('met');
    expect(at('index under', 99)).toBe('met');
    const bad = {
      A: [{ kind: 'green-spots', cover: 0.9, severity: 'severe' }],
      B: 'nothing',
      C: 'not looked',
    } as const;
    const mixed = factsOf(
      tended({ zones: { A: { m2: 1 }, B: { m2: 1 }, C: { m2: 20 } }, rounds: [{ date: '2026-05-12', saw: bad }] }),
    );
    const index = mixed.score?.value ?? 0;
    const whole = (level: number) => evaluateTripwire(wire('index under', { level }), mixed, '2025-11-20', today).word;
    expect(whole(index + 10)).toBe('perhaps');
    expect(whole(index - 10)).toBe('cannot tell');
    expect(whole(1)).toBe('not met');
  });

  it('says nothing from a round that was known when it was decided', () => {
    const state = evaluateTripwire(
      wire('green share over', { zone: zoneA, level: 30 }),
      factsOf(grown),
      '2026-06-01',
      today,
    );
    expect(state.word).toBe('cannot tell');
    expect(state.reasons[0]?.code).toBe('tripwire: round before decision');
  });

  it('goes on "surely worse" by the comparison of two rounds of one kind, and not on a step that could be chance', () => {
    const worse = (...covers: readonly number[]) =>
      evaluateTripwire(wire('surely worse'), factsOf(tended({ rounds: mays(2025, ...covers) })), '2025-11-20', today);
    expect(worse(0.05, 0.7)).toMatchObject({ word: 'met', since: '2026-05-12' });
    expect(worse(0.3, 0.35).word).toBe('not met');
    expect(worse(0.7).word).toBe('cannot tell');
  });

  it('sees a stop word in any round since, also when the latest round no longer shows it', () => {
    const mounds = { kind: 'pale-powdery-mounds', count: 'two to five' } as const;
    const record = tended({
      rounds: [
        { date: '2024-05-14', saw: { A: [mounds] } },
        { date: '2025-10-09', type: 'autumn', saw: { A: [mounds] } },
        { date: '2026-05-12', saw: { A: 'nothing' } },
      ],
    });
    expect(evaluateTripwire(wire('stop word'), factsOf(record), '2024-11-20', today)).toMatchObject({
      word: 'met',
      since: '2025-10-09',
      reasons: [{ params: { kind: 'pale-powdery-mounds', date: '2025-10-09' } }],
    });
    expect(evaluateTripwire(wire('stop word'), factsOf(record), '2026-01-01', today).word).toBe('not met');
    expect(evaluateTripwire(wire('stop word'), factsOf(record), '2026-06-01', today).word).toBe('cannot tell');
  });
});

describe('stop words seen since', () => {
  const since = (...rounds: Parameters<typeof tended>[0]['rounds'] & object) =>
    stopWordsSeen(tended({ rounds }), '2026-01-01').map(({ kind, date }) => `${kind} ${date}`);

  it('are not those that were looked for and gone', () => {
    const gone = [{ kind: 'pale-powdery-mounds', cleared: true }] as const;
    expect(since({ date: '2026-05-12', saw: { A: gone } })).toEqual([]);
  });

  it('are, of a kind that stops only when it is new, not those that were there before', () => {
    const [first] = kinds.filter(({ stop }) => stop === 'first time');
    const seen = [{ kind: first?.id ?? '', count: 'one' }] as const;
    const now = { date: '2026-05-12', saw: { A: seen } };
    expect(since(now)).toEqual([`${first?.id} 2026-05-12`]);
    expect(since({ date: '2025-05-12', saw: { A: seen } }, now)).toEqual([]);
  });
});

describe('stop words that stand', () => {
  const mounds = [{ kind: 'pale-powdery-mounds', count: 'two to five' }] as const;
  const standing = (rounds: Parameters<typeof tended>[0]['rounds']) =>
    stopWordsStanding(tended({ zones: { A: {}, B: {} }, rounds })).map(({ zone }) => zone);

  it('are not forgotten when a later round looks at other zones only', () => {
    const spring = { date: '2026-05-12', saw: { A: mounds, B: 'nothing' } } as const;
    expect(standing([spring, { date: '2026-09-01', type: 'autumn', saw: { A: 'not looked', B: 'nothing' } }])).toEqual([
      zoneA,
    ]);
    expect(standing([spring, { date: '2026-09-01', type: 'autumn', saw: { B: mounds } }]).sort()).toEqual([
      zoneA,
      zoneB,
    ]);
  });

  it('end where a later round looked at the zone and did not see them', () => {
    expect(
      standing([
        { date: '2026-05-12', saw: { A: mounds } },
        { date: '2026-09-01', saw: { A: 'nothing' } },
      ]),
    ).toEqual([]);
  });
});

describe('a tripwire on days and money', () => {
  const nothing = { record: null, score: null, clearlyWorse: null, holds: [], lists: noMoney };
  const euros = (units: number, currency = 'EUR') => ({ minor: units * 100, currency });
  const fund = planned('fund', 'f', {
    sculpture: work,
    title: 'Stair',
    lines: [{ id: 'l1', name: 'Strip', amount: euros(46_000) }],
    priced: '2026-03-01',
  });
  const gift = (id: string, units: number, more: object = {}) =>
    planned('gift', id, {
      sculpture: work,
      fund: fund.thing,
      who: 'A family',
      amount: euros(units),
      state: 'in hand',
      received: '2026-02-01',
      ...more,
    });

  it('goes on its day, not the day before', () => {
    const day = wire('day comes', { by: '2026-10-15' });
    expect(evaluateTripwire(day, nothing, '2024-11-20', '2026-10-14').word).toBe('not met');
    expect(evaluateTripwire(day, nothing, '2024-11-20', '2026-10-15')).toMatchObject({
      word: 'met',
      since: '2026-10-15',
    });
  });

  it('counts only what is in hand, and refuses to add two currencies', () => {
    const reaches = wire('fund reaches', { level: 20_000 });
    const at = (...gifts: readonly ReturnType<typeof gift>[]) =>
      evaluateTripwire(reaches, { ...nothing, lists: { quote: [], fund: [fund], gift: gifts } }, '2024-11-20', today);
    expect(at(gift('a', 15_000), gift('b', 12_000, { state: 'pledged' })).word).toBe('not met');
    expect(at(gift('a', 15_000), gift('b', 5_000, { received: '2026-04-01' }))).toMatchObject({
      word: 'met',
      since: '2026-04-01',
    });
    const mixed = at(gift('a', 15_000), gift('b', 12_000, { amount: euros(12_000, 'USD') }));
    expect(mixed.word).toBe('cannot tell');
    expect(mixed.reasons[0]?.code).toBe('tripwire: fund of several currencies');
  });

  it('goes when a quote ran out and no other took its place', () => {
    const quote = (id: string, more: object) =>
      planned('quote', id, {
        sculpture: work,
        who: 'A foundry',
        what: 'Strip and hot patina',
        amount: euros(46_000),
        state: 'quote',
        date: '2024-10-10',
        validUntil: '2025-04-08',
        ...more,
      });
    const at = (...quotes: readonly ReturnType<typeof quote>[]) =>
      evaluateTripwire(
        wire('quote ends'),
        { ...nothing, lists: { quote: quotes, fund: [], gift: [] } },
        '2024-11-20',
        today,
      ).word;
    expect(at(quote('a', {}))).toBe('met');
    expect(at(quote('a', { renewedBy: 'quote/b' }), quote('b', { validUntil: '2026-12-01' }))).toBe('not met');
    expect(at(quote('a', { state: 'estimate' }))).toBe('cannot tell');
  });

  it('a sort of a newer version is told as not known', () => {
    expect(evaluateTripwire(wire('moon full'), nothing, '2024-11-20', today).word).toBe('cannot tell');
  });
});

describe('what stands open', () => {
  const mounds = { kind: 'pale-powdery-mounds', count: 'two to five' } as const;
  const record = tended({
    rounds: [
      { date: '2024-05-14', saw: { A: 'nothing' } },
      { date: '2025-10-09', type: 'autumn', saw: { A: [mounds] } },
    ],
  });
  const again = tended({
    rounds: [
      { date: '2024-05-14', saw: { A: 'nothing' } },
      { date: '2025-10-09', type: 'autumn', saw: { A: [mounds] } },
      { date: '2026-05-12', saw: { A: [mounds] } },
    ],
  });
  const watched = decision({
    tripwires: [wire('stop word'), { ...wire('day comes', { by: '2027-01-01' }), id: 't2' }],
  });
  const answered = planned('tripwireAnswer', 'd1/t1/2025-11-20', {
    sculpture: work,
    decision: watched.thing,
    tripwire: 't1',
    seen: 'Pale powdery mounds in A',
    on: '2025-11-20',
    answer: 'keep to it',
    by: 'Steward',
  });
  const open = (answers: readonly (typeof answered)[], of: typeof record) =>
    tripwiresStanding([watched], answers, () => factsOf(of), today).map((row) => row.open);

  it('a tripwire that went stays open until a named person answers', () => {
    expect(open([], record)).toEqual([true, false]);
    expect(open([answered], record)).toEqual([false, false]);
  });

  it('newer evidence asks again', () => {
    expect(open([answered], again)).toEqual([true, false]);
  });

  it('a decision that was replaced is no longer watched, nor one whose figures are still worked out', () => {
    const old = decision({ tripwires: [wire('stop word')], replacedBy: 'decision/d2' });
    expect(tripwiresStanding([old], [], () => factsOf(record), today)).toEqual([]);
    expect(tripwiresStanding([watched], [], () => undefined, today)).toEqual([]);
  });
});
