import { describe, expect, it } from 'vitest';
import { classesOf, scoreRound } from '../../../src/engine/condition';
import { adviceOf, holdsOf, livesOf } from '../../../src/engine/hold';
import {
  goodMonthsOf,
  monthsByZone,
  optionNumbers,
  type Situation,
  signsOf,
  speaking,
  treatedArea,
} from '../../../src/engine/options';
import { speaks } from '../../../src/engine/options/speaks';
import type { SculptureRecord, Thing } from '../../../src/engine/record';
import { optionSorts } from '../../../src/engine/trade';
import { trendsOf } from '../../../src/engine/trend';
import { demoDay, saltlamp } from '../hold/saltlamp';

const all = saltlamp.map((record) => ({ record, zones: holdsOf(record, demoDay) }));
const lives = livesOf(all, 1);
const works = all.map(({ zones }) => zones);

const situationOf = (number: string, more: Partial<Situation> = {}): Situation => {
  const index = saltlamp.findIndex(({ sculpture }) => sculpture.body.number === number);
  const record = saltlamp[index] as SculptureRecord;
  const holds = works[index] ?? [];
  const round = record.rounds.at(-1)?.thing ?? '';
  const score = scoreRound(record, round, {});
  const { trend } = trendsOf(record).work.green;
  return {
    record,
    need: { record, score, classes: classesOf(record, round, { score }) },
    holds,
    advice: adviceOf(record, holds, lives, demoDay),
    growth: trend.slope && { perYear: trend.slope, surely: trend.word === 'trend' && trend.up, rounds: trend.n },
    causes: [],
    today: demoDay,
    ...more,
  };
};
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);

describe('What the record of the invented garden says of ways to go on', () => {
  it('the spray-beaten work: waxing does not hold, the green grows surely and is wide', () => {
    const signs = signsOf(situationOf('SW-02'));
    expect(codes(signs)).toEqual(
      expect.arrayContaining(['option: hold short', 'option: green grows surely', 'option: green wide']),
    );
    expect(codes(speaking('strip and repatinate', signs).for)).toContain('option: green wide');
    expect(codes(speaking('keep waxing', signs).against)).toContain('option: hold short');
    expect(codes(speaking('wait', signs).against)).toContain('option: green grows surely');
  });

  it('the sheltered one: nothing presses, which speaks for waiting and against any strip', () => {
    const signs = signsOf(situationOf('SW-04'));
    expect(codes(speaking('wait', signs).for)).toEqual(['option: nothing presses']);
    expect(codes(speaking('strip and repatinate', signs).against)).toContain('option: nothing presses');
  });

  it('the one stripped before: it is counted against another strip', () => {
    const signs = signsOf(situationOf('SW-03'));
    expect(signs).toContainEqual({ code: 'option: stripped before', params: { times: 1 } });
  });

  it('every sign is known to the table of what speaks for what, and every way in the table is a way', () => {
    const sorts = new Set(optionSorts.map(({ id }) => id));
    for (const { record } of all) {
      for (const { code } of signsOf(situationOf(record.sculpture.body.number)))
        expect(Object.keys(speaks)).toContain(code);
    }
    for (const row of Object.values(speaks))
      for (const sort of [...row.for, ...row.against]) expect(sorts).toContain(sort);
  });

  it('without a round nothing is taken to be sound', () => {
    const signs = codes(signsOf(situationOf('SW-04', { need: null })));
    expect(signs).toContain('option: no round yet');
    expect(signs).not.toContain('option: nothing presses');
  });

  it('a chance of rising is no sure growth', () => {
    const growth = { perYear: { value: 1, low: -0.1, high: 2 }, surely: true, rounds: 6 };
    expect(codes(signsOf(situationOf('SW-02', { growth })))).not.toContain('option: green grows surely');
  });
});

describe('Causes come first', () => {
  const cause = (state: string, changed?: string): Thing<'cause'> =>
    ({
      thing: 'cause/1',
      body: { sculpture: 's', sort: 'sprinkler', zones: [], found: '2026-05-01', state, changed },
    }) as unknown as Thing<'cause'>;

  it('an open cause speaks for removing it, and against paying for the surface', () => {
    const signs = signsOf(
      situationOf('SW-02', { causes: [cause('open'), cause('being removed'), cause('not a cause')] }),
    );
    expect(signs).toContainEqual({ code: 'option: cause open', params: { count: 2 } });
    expect(codes(speaking('strip and repatinate', signs).against)).toContain('option: cause open');
  });

  it('one removed less than a year ago asks for a season of watching; one removed before does not', () => {
    const lately = signsOf(situationOf('SW-02', { causes: [cause('removed', '2026-03-01')] }));
    expect(codes(lately)).toContain('option: cause just removed');
    const before = signsOf(situationOf('SW-02', { causes: [cause('removed', '2025-03-01')] }));
    expect(codes(before)).not.toContain('option: cause just removed');
  });
});

describe('Good months a year', () => {
  it('come from this collection’s own holds first: of waxing, those of the worst zone', () => {
    const situation = situationOf('SW-01');
    const told = goodMonthsOf('keep waxing', situation, works);
    expect(told.months?.from).toBe('own holds');
    const known = monthsByZone(situation).flatMap(({ months }) => (months ? [months.value] : []));
    expect(told.months?.value).toBe(Math.min(...known));
    expect(told.months?.value).toBeLessThan(optionNumbers.shortHold.value);
  });

  it('a zone that was green the day after the wax has no good month at all', () => {
    const told = goodMonthsOf('keep waxing', situationOf('SW-02'), works);
    expect(told.months).toMatchObject({ value: 0, from: 'own holds' });
    expect(codes(told.reasons)).toContain('months: no clean start');
  });

  it('of a strip come from the work of this collection that was stripped, not from a book', () => {
    const told = goodMonthsOf('strip and repatinate', situationOf('SW-02'), works);
    expect(told.months?.from).toBe('own holds');
    expect(told.reasons).toContainEqual({
      code: 'months: own holds of treated',
      params: { zones: expect.any(Number), works: 1 },
    });
    expect(told.months?.high).toBeLessThanOrEqual(12);
    expect(told.months && told.months.low <= told.months.value && told.months.value <= told.months.high).toBe(true);
  });

  it('are asked of a person where nothing tells, and taken from what is published where that is all there is', () => {
    const bare = situationOf('SW-02', { holds: [], advice: [] });
    expect(goodMonthsOf('strip and repatinate', bare, [])).toEqual({
      months: null,
      reasons: [{ code: 'months: nothing to go by', params: {} }],
    });
    expect(goodMonthsOf('keep waxing', bare, []).months).toEqual({ value: 12, low: 6, high: 12, from: 'published' });
    expect(goodMonthsOf('a way of a newer version', bare, []).months).toBeNull();
  });
});

describe('The area a way treats', () => {
  it('is that of its zones, or of the whole work where none are named', () => {
    const situation = situationOf('SW-02');
    expect(treatedArea(situation, undefined)).toEqual({ m2: expect.closeTo(17.8, 6), whole: true });
    const some = situation.record.zones.slice(0, 2).map(({ thing }) => thing);
    expect(treatedArea(situation, some)).toEqual({ m2: expect.closeTo(3, 6), whole: false });
  });
});
