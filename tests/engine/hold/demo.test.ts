import { describe, expect, it } from 'vitest';
import { type Advice, adviceOf, holdsOf, type Life, livesOf, type ZoneHolds } from '../../../src/engine/hold';
import { codes } from '../change/invented';
import { demoDay, saltlamp } from './saltlamp';

const all = saltlamp.map((record) => ({ record, zones: holdsOf(record, demoDay) }));
const lives = livesOf(all, 1);
const advice = all.flatMap(({ record, zones }) => adviceOf(record, zones, lives, demoDay));
const zoneOf = (name: string): ZoneHolds =>
  all.flatMap(({ zones }) => zones).find(({ zone }) => zone === `zone/${name}`) as ZoneHolds;
const adviceFor = (name: string): Advice => advice.find(({ zone }) => zone === `zone/${name}`) as Advice;
const lifeOf = (group: string, event: string): Life =>
  lives.find((life) => life.group === group && life.event === event) as Life;
const shown = (name: string): string[] =>
  zoneOf(name).holds.map(({ lower, upper }) => `${lower.toFixed(1)} to ${upper?.toFixed(1) ?? 'open'}`);

describe('the demo, from its tables, on 15 October 2026', () => {
  it('shows the weather side of the coat drifting shorter, not proven, and lets the conservator be asked', () => {
    expect(shown('SW-01-D')).toEqual([
      '0.0 to 11.7',
      '0.0 to 4.6',
      '1.8 to 3.7',
      '1.6 to 3.0',
      '1.4 to 2.8',
      '1.4 to 2.5',
    ]);
    expect(zoneOf('SW-01-D').shortening.word).toBe('looks shorter, not proven');
    expect(adviceFor('SW-01-D')).toMatchObject({ waxAgainBy: null, asksConservator: true, nextLook: null, past: true });
    expect(codes(adviceFor('SW-01-D').reasons)).toEqual(
      expect.arrayContaining(['hold: green is back', 'hold: does not hold here']),
    );
  });

  it('places the look after a wax of 20 May 2027 between 12 and 24 July, on the Thursday she walks', () => {
    const coated = adviceFor('SW-01-D').ifCoated;
    expect(coated?.on).toBe('2027-05-20');
    expect(coated?.day).toBe('2027-07-22');
    expect(['2027-07-12' <= (coated?.day ?? ''), (coated?.day ?? '') <= '2027-07-24']).toEqual([true, true]);
  });

  it('gives the spray band no clean start since she looks on the day after', () => {
    expect(zoneOf('SW-02-H').noHolds.map(({ start, reasons }) => [start, codes(reasons)])).toEqual([
      ['2025-05-22', ['hold: no clean start']],
      ['2026-05-21', ['hold: no clean start']],
    ]);
    expect(adviceFor('SW-02-H').asksConservator).toBe(true);
  });

  it('measures the bezels after the campaign: 12.6 to 14.5 months', () => {
    expect(shown('SW-03-B')).toEqual(['0.0 to 11.7', '0.0 to 11.9', '12.6 to 14.5', '0.0 to 11.7']);
    expect(zoneOf('SW-03-B').holds.map(({ span }) => span)).toEqual([0, 0, 1, 1]);
  });

  it('asks nothing of the geese: their green has not come back in two years, and the yearly round will do', () => {
    for (const letter of ['A', 'B', 'C', 'D']) {
      expect(adviceFor(`SW-04-${letter}`)).toMatchObject({
        waxAgainBy: null,
        nextLook: null,
        asksConservator: false,
        past: false,
      });
      expect(codes(adviceFor(`SW-04-${letter}`).reasons)).toContain('hold: none came back');
    }
  });

  it('does not read two yearly rounds a few days apart as holds that get shorter', () => {
    expect(zoneOf('SW-06-E').shortening.word).toBe('no sign of it');
  });

  it('sets the holds with the sprinkler beside those without', () => {
    const { withAndWithout } = lifeOf('all', 'spot');
    expect(withAndWithout?.removed).toEqual(
      ['A', 'D'].map((letter) => ({ zone: `zone/SW-06-${letter}`, date: '2023-07-11' })),
    );
    expect(withAndWithout?.with).toMatchObject({ zones: 2, holds: 4, ends: 4 });
    expect(withAndWithout?.without).toMatchObject({ zones: 2, holds: 4, ends: 2 });
    // Nobody makes looks at the ground line, so that its holds are told another way and never mixed with these.
    expect(lifeOf('all', 'cover').withAndWithout?.removed.map(({ zone }) => zone)).toEqual(['zone/SW-06-F']);
  });

  it('draws no curve from one zone, however many holds it has', () => {
    const drip = lifeOf('vertical / drip', 'spot');
    expect(drip).toMatchObject({ zones: 1, holds: 6, ends: 6, turnbull: null, fit: null, median: null });
    expect(codes(drip.reasons)).toEqual(['hold: too few zones']);
  });

  it('says of rounds a year apart that they tell no time of year, and where in between to look', () => {
    const open = lifeOf('up / open', 'cover');
    expect(open).toMatchObject({ zones: 5, holds: 14, ends: 9, fit: null, median: null });
    expect(codes(open.reasons)).toEqual(
      expect.arrayContaining(['hold: no look in between', 'life: no maximum', 'hold: nothing to borrow']),
    );
    expect(adviceFor('SW-06-E').nextLook).toMatchObject({ day: '2026-11-12' });
    expect(adviceFor('SW-06-E').waxAgainBy).toBeNull();
    expect(codes(adviceFor('SW-06-E').reasons)).toContain('hold: level reached in between');
  });

  it('never gives a number that is none', () => {
    const text = JSON.stringify({ all: all.map(({ zones }) => zones), advice }, (_, value) =>
      typeof value === 'number' && !Number.isFinite(value) ? 'NO NUMBER' : value,
    );
    expect(text).not.toContain('NO NUMBER');
  });
});
