import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AirReading, gateOf } from '../../../src/engine/weather';

const fine: AirReading = { before: 'wax', time: '10:00', air: 20, humidity: 50, surface: 20, dryHours: 48 };
const codes = (reading: Partial<AirReading>, own = {}) =>
  gateOf({ ...fine, ...reading }, own).reasons.map(({ code }) => code);
const says = (reading: Partial<AirReading>, own = {}) => gateOf({ ...fine, ...reading }, own).says;

describe('The gate before washing or waxing', () => {
  it('lets a dry, mild morning go, and says by how much', () => {
    const gate = gateOf(fine);
    expect(gate.says).toBe('go');
    expect(gate.dewPoint.celsius).toBeCloseTo(9.26, 2);
    expect(gate.margin.value).toBeCloseTo(10.74, 2);
    expect(gate.margin.low).toBeLessThan(gate.margin.value);
    expect(gate.margin.high).toBeGreaterThan(gate.margin.value);
    expect(codes({})).toEqual(['weather: margin enough']);
  });

  it('said wait at 10:40 and go at 15:30 on the May day of the invented garden', () => {
    const morning = gateOf({ ...fine, time: '10:40', air: 16, humidity: 80, surface: 14 });
    expect([morning.says, morning.dewPoint.celsius.toFixed(1), morning.margin.value.toFixed(1)]).toEqual([
      'wait',
      '12.6',
      '1.4',
    ]);
    expect(morning.reasons.map(({ code }) => code)).toEqual(['weather: too near the dew point']);
    expect(morning.reasons[0]?.params).toMatchObject({ needs: 3 });
    const afternoon = gateOf({ ...fine, time: '15:30', air: 18.6, humidity: 68, surface: 17.2 });
    expect([afternoon.says, afternoon.dewPoint.celsius.toFixed(1), afternoon.margin.value.toFixed(1)]).toEqual([
      'go',
      '12.6',
      '4.6',
    ]);
  });

  it('tells a margin that the error of the instruments could undo, and still lets it go', () => {
    // Dew point 9.26; 12.5 is 3.2 over it, and hand instruments err by about 1.4.
    expect(says({ surface: 12.5 })).toBe('go');
    expect(codes({ surface: 12.5 })).toEqual(['weather: margin enough', 'weather: only just']);
  });

  it('waits exactly below three kelvin and at 85 %, not at three and below 85', () => {
    const dew = gateOf(fine).dewPoint.celsius;
    expect(says({ surface: dew + 3.0001 })).toBe('go');
    expect(says({ surface: dew + 2.9999 })).toBe('wait');
    expect(says({ air: 25, surface: 30, humidity: 84.9 })).toBe('go');
    expect(says({ air: 25, surface: 30, humidity: 85 })).toBe('wait');
    expect(codes({ air: 25, surface: 30, humidity: 85 })).toContain('weather: too damp');
  });

  it('counts the hours since it was wet: the afternoon may do, else it is not for today', () => {
    expect(says({ time: '10:00', dryHours: 20 })).toBe('wait');
    expect(says({ time: '15:00', dryHours: 20 })).toBe('not today');
    expect(codes({ time: '15:00', dryHours: 20 })).toContain('weather: not dry long enough');
    expect(says({ dryHours: 24 })).toBe('go');
  });

  it('does not take a dryness nobody knows for dry', () => {
    expect(says({ dryHours: undefined })).toBe('wait');
    expect(codes({ dryHours: undefined })).toContain('weather: dryness not known');
  });

  it('keeps to 10 to 35 degrees on the surface, or to what the product asks', () => {
    expect(says({ surface: 9.9, air: 12, humidity: 40 })).toBe('wait');
    expect(codes({ surface: 9.9, air: 12, humidity: 40 })).toContain('weather: surface too cold');
    expect(says({ surface: 36, air: 30 })).toBe('wait');
    expect(codes({ surface: 36, air: 30 })).toContain('weather: surface too hot');
    const own = { surfaceFrom: 5, surfaceTo: 25, product: 'Paste' };
    expect(says({ surface: 9.9, air: 12, humidity: 40 }, own)).toBe('go');
    expect(says({ surface: 30, air: 30 }, own)).toBe('wait');
    expect(gateOf({ ...fine, surface: 30, air: 30 }, own).reasons[0]?.params).toMatchObject({
      limit: 25,
      product: 'Paste',
    });
  });

  it('says frost and sends her home when air or surface is at nought or below', () => {
    expect(says({ air: 0, surface: 4 })).toBe('not today');
    expect(says({ air: 3, surface: -0.1 })).toBe('not today');
    expect(codes({ air: 3, surface: -0.1 })).toContain('weather: frost');
    expect(says({ before: 'wash', air: 3, surface: -0.1 })).toBe('not today');
  });

  it('asks of a wash only that there is no frost and the metal is not hot: water may come on a damp surface', () => {
    expect(says({ before: 'wash', humidity: 98, surface: 15, air: 15, dryHours: 0 })).toBe('go');
    expect(says({ before: 'wash', surface: 40, air: 30 })).toBe('wait');
    expect(codes({ before: 'wash', humidity: 98, surface: 15, air: 15, dryHours: 0 })).toEqual(['weather: wash goes']);
  });

  it('speaks of a frost point where the air is so dry that frost comes before dew', () => {
    const gate = gateOf({ ...fine, air: 12, humidity: 25, surface: 12 });
    expect(gate.dewPoint.frost).toBe(true);
    expect(gate.says).toBe('go');
    expect(codes({ air: 12, humidity: 25, surface: 12 })).toEqual(['weather: margin enough']);
    expect(gate.reasons[0]?.params).toMatchObject({ point: 'frost' });
  });

  it('a warmer surface or drier air never makes go into wait, within the window', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(number(11, 34), number(0.5, 30), number(5, 99), number(0, 1), number(1, 5), (s, air, rh, up, dry) => {
        const was = gateOf({ ...fine, air, humidity: rh, surface: s });
        const warmer = gateOf({ ...fine, air, humidity: rh, surface: Math.min(35, s + up) });
        const drier = gateOf({ ...fine, air, humidity: Math.max(1, rh - dry), surface: s });
        expect(was.margin.low).toBeLessThanOrEqual(was.margin.value);
        expect(was.margin.high).toBeGreaterThanOrEqual(was.margin.value);
        return was.says !== 'go' || (warmer.says === 'go' && drier.says === 'go');
      }),
    );
  });
});

describe('What a reading cannot be', () => {
  it.each([
    [0, 'humidity'],
    [-1, 'humidity'],
    [101, 'humidity'],
    [Number.NaN, 'humidity'],
  ])('a humidity of %f is no reading', (humidity, what) => {
    expect(() => gateOf({ ...fine, humidity })).toThrow(what);
  });
});
