import { describe, expect, it } from 'vitest';
import { labourOf, overfullDays, paceOf, timeOf, timeOfAll, yearNumbers } from '../../../src/engine/year';
import { aZone, classed, codes, facts, thing, work } from './invented';

const visit = (i: number, state: string, at: string, round = 'round/1') =>
  thing('visit', `${round}/${i}`, { sculpture: work, round, zone: `zone/${i}`, zoneVersion: 1, state }, at);
const clock = (seconds: number): string => new Date(Date.UTC(2026, 4, 12, 10) + seconds * 1000).toISOString();

/** A round of zones, each so many seconds after the one before. */
const walked = (took: readonly number[], state = 'found', round = 'round/1') => {
  let now = 0;
  return took.map((seconds, i) => {
    now += seconds;
    return visit(i, state, clock(now), round);
  });
};

describe('Her own pace', () => {
  it('is assumed, and said to be, until eight zones of a sort were timed', () => {
    const pace = paceOf(walked([0, ...Array(7).fill(120)]));
    expect(pace.withFinding.value).toBe(yearNumbers.withFinding.value);
    expect(codes(pace.reasons)).toEqual(['year: pace assumed', 'year: pace assumed']);
  });

  it('is the median of her zones from then on, with the middle half around it', () => {
    const pace = paceOf(walked([0, 60, 60, 120, 120, 120, 180, 180, 240]));
    expect(pace.withFinding).toEqual({ value: 2, low: 1.75, high: 3 });
    expect(pace.reasons).toContainEqual({ code: 'year: own pace', params: { what: 'withFinding', count: 8 } });
    expect(pace.oneTouch.value).toBe(yearNumbers.oneTouch.value);
  });

  it('leaves out what was typed in at a desk, the pause for lunch, and zones nobody looked at', () => {
    const took = [0, ...Array(8).fill(90)];
    const typedIn = walked([0, ...Array(20).fill(3)], 'found', 'round/2');
    const lunch = walked([0, 3600], 'found', 'round/3');
    const skipped = [visit(0, 'found', clock(0), 'round/4'), visit(1, 'not looked', clock(600), 'round/4')];
    const pace = paceOf([...walked(took), ...typedIn, ...lunch, ...skipped]);
    expect(pace.withFinding.value).toBe(1.5);
  });

  it('is told by the clock whatever offset it was written with, in whatever order it comes', () => {
    const times = [0, ...Array(8).fill(90)];
    const summer = walked(times).map((one, i) => ({
      ...one,
      lead: { ...one.lead, at: i % 2 ? one.lead.at : one.lead.at.replace('T10', 'T11').replace('Z', '+01:00') },
    }));
    expect(paceOf([...summer].reverse()).withFinding.value).toBe(1.5);
  });

  it('of waxing is told by hours in the logbook, and estimated before there are two', () => {
    const zones = [aZone('A', { m2: 3 }), aZone('B', { m2: 1 }), aZone('C', { m2: 100, of: 'sculpture/other' })];
    const waxed = (id: string, hours: number, names: string[] = []) =>
      thing('treatment', id, {
        ...{ sculpture: work, zones: names, type: 'wax', date: '2026-05-21' },
        people: [{ role: 'Steward', hours }, { role: 'Helper' }],
      });
    expect(labourOf([waxed('1', 2)], zones)).toMatchObject({ value: 1, reasons: [{ code: 'year: labour estimated' }] });
    expect(labourOf([waxed('1', 2), waxed('2', 3, ['zone/A'])], zones)).toMatchObject({ value: 1.5, low: 1.25 });
  });
});

describe('The time a year takes', () => {
  const pace = paceOf([]);
  const labour = labourOf([], []);

  it('is set-up, zones by what they showed, stations and ladder moves', () => {
    const zones = [aZone('A', { reach: 'ladder' }), aZone('B'), aZone('C')].map((zone) => ({ zone, m2: 2 }));
    const known = facts({ zones, need: classed({ found: ['zone/A'] }) });
    const time = timeOf(known, { survey: 'full', waxes: 1 }, 4, pace, labour);
    expect(time.survey.value).toBeCloseTo(15 + 2.5 + 2 * 1 + 4 * 1.5 + 4);
    expect(time.wax.value).toBe(360);
  });

  it('takes every zone to show something where nobody has looked, and three minutes for a look', () => {
    const first = timeOf(facts({ need: null }), { survey: 'full', waxes: 0 }, 0, pace, labour);
    expect(first.survey.value).toBe(15 + 2 * 2.5);
    expect(timeOf(facts(), { survey: 'look', waxes: 0 }, 9, pace, labour).survey.value).toBe(3);
    expect(timeOf(facts(), { survey: 'none', waxes: 0 }, 9, pace, labour).survey.value).toBe(0);
  });

  it('never stands bare: its range holds the value, and it says what it rests on', () => {
    const times = [1, 2].map((waxes) => timeOf(facts(), { survey: 'full', waxes }, 2, pace, labour));
    const { survey, wax } = timeOfAll(times, pace, labour);
    for (const { low, value, high, reasons } of [survey, wax]) {
      expect(low).toBeLessThan(value);
      expect(high).toBeGreaterThan(value);
      expect(reasons.length).toBeGreaterThan(1);
    }
    expect(wax.value).toBe(3 * 2 * 60);
  });
});

describe('A day of the plan', () => {
  const span = (value: number) => ({ value, low: value, high: value });
  const visit = (day: string | undefined, survey: number, wax: number, waxes = 1) => ({
    day,
    waxes,
    time: { work, survey: span(survey * 60), wax: span(wax * 60) },
  });

  it('that holds more than eight hours is named: by its rounds, or only once it is waxed the same day', () => {
    const days = [
      visit('2026-05-12', 3, 0),
      visit('2026-05-12', 5.5, 9),
      visit('2026-05-13', 2, 6.5),
      visit('2026-05-14', 4, 8, 2),
      visit(undefined, 20, 20),
    ];
    expect(overfullDays(days)).toEqual([
      { code: 'year: day too short for rounds', params: { day: '2026-05-12', hours: 9, most: 8 } },
      { code: 'year: day too short with waxing', params: { day: '2026-05-13', hours: 9, most: 8 } },
    ]);
  });
});
