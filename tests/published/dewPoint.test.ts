import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import { dewPoint } from '../../src/engine/weather';

psychrolib.SetUnitSystem(psychrolib.SI);

/** Dew point by another Magnus line over water. */
const magnus = (b: number, c: number) => (air: number, humidity: number) => {
  const g = Math.log(humidity / 100) + (b * air) / (c + air);
  return (c * g) / (b - g);
};

/** The temperature at which a rising curve of saturation pressure reaches what the air holds, by halving. */
const where = (pressure: (celsius: number) => number, wanted: number): number => {
  let [low, high] = [-80, 80];
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (pressure(middle) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

const wmo = magnus(17.62, 243.12);
/** DIN 4108, over water: 288.68 Pa (1.098 + t/100)^8.02. From memory, as all coefficients here but those under test. */
const din = (air: number, humidity: number) => {
  const pressure = (t: number) => 288.68 * (1.098 + t / 100) ** 8.02;
  return where(pressure, (pressure(air) * humidity) / 100);
};
/** Sonntag 1990, over water, hPa. */
const sonntagPressure = (celsius: number) => {
  const t = celsius + 273.15;
  return Math.exp(-6096.9385 / t + 16.635794 - 2.711193e-2 * t + 1.673952e-5 * t * t + 2.433502 * Math.log(t));
};
const sonntag = (air: number, humidity: number) => where(sonntagPressure, (sonntagPressure(air) * humidity) / 100);

describe('Dew point (Alduchov and Eskridge 1996) beside four other formulas', () => {
  it.each([
    // air, RH, WMO, A&E, DIN, Sonntag, printed table
    [5, 80, 1.834, 1.836, 1.85, 1.842, 1.8],
    [10, 50, 0.041, 0.047, 0.081, 0.064, 0.1],
    [10, 80, 6.706, 6.708, 6.713, 6.713, 6.7],
    [15, 60, 7.292, 7.297, 7.299, 7.308, 7.3],
    [20, 30, 1.882, 1.892, 1.906, 1.917, 1.9],
    [20, 40, 5.98, 5.988, 5.986, 6.006, 6.0],
    [20, 50, 9.255, 9.261, 9.253, 9.274, 9.3],
    [20, 60, 11.995, 12.0, 11.99, 12.008, 12.0],
    [20, 70, 14.359, 14.362, 14.354, 14.368, 14.4],
    [20, 80, 16.442, 16.444, 16.438, 16.447, 16.4],
    [20, 90, 18.308, 18.309, 18.306, 18.31, 18.3],
    [25, 50, 13.852, 13.858, 13.839, 13.865, 13.9],
    [30, 50, 18.441, 18.447, 18.425, 18.448, 18.4],
    [30, 70, 23.927, 23.93, 23.919, 23.928, 23.9],
  ])('at %f degrees and %f %%: WMO, DIN and Sonntag within 0.04 K, the printed tenth within 0.06', (...row) => {
    const [air, humidity, byWmo, ours, byDin, bySonntag, printed] = row;
    const { celsius, frost } = dewPoint(air, humidity);
    expect(frost).toBe(false);
    expect(celsius).toBeCloseTo(ours, 3);
    expect(wmo(air, humidity)).toBeCloseTo(byWmo, 3);
    expect(din(air, humidity)).toBeCloseTo(byDin, 3);
    expect(sonntag(air, humidity)).toBeCloseTo(bySonntag, 3);
    for (const other of [byWmo, byDin, bySonntag]) expect(Math.abs(celsius - other)).toBeLessThan(0.04);
    expect(Math.abs(celsius - printed)).toBeLessThan(0.06);
  });

  it.each([
    [5, 80, 1.8413],
    [10, 80, 6.713],
    [15, 60, 7.307],
    [20, 50, 9.2724],
    [20, 60, 12.0075],
    [20, 70, 14.3671],
    [20, 80, 16.4471],
    [25, 50, 13.864],
    [30, 50, 18.4466],
  ])('the ASHRAE library gives %f degrees, %f %% as printed, and ours lies within 0.02 K', (air, humidity, printed) => {
    const theirs = psychrolib.GetTDewPointFromRelHum(air, humidity / 100);
    expect(theirs).toBeCloseTo(printed, 3);
    expect(Math.abs(dewPoint(air, humidity).celsius - theirs)).toBeLessThan(0.02);
  });

  it('lies within 0.05 K of the ASHRAE library over all the air a person would work in', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 20, max: 100, noNaN: true }),
        (t, rh) => {
          const ours = dewPoint(t, rh);
          if (ours.celsius < 0.1) return true;
          return Math.abs(ours.celsius - psychrolib.GetTDewPointFromRelHum(t, rh / 100)) < 0.05;
        },
      ),
    );
  });

  it('below freezing it is frost, about a degree above the dew point of the same air, as DIN and the library give it', () => {
    const { celsius, frost } = dewPoint(0, 50);
    expect(frost).toBe(true);
    expect(Math.abs(celsius - -8.165)).toBeLessThan(0.02);
    expect(Math.abs(celsius - psychrolib.GetTDewPointFromRelHum(0, 0.5))).toBeLessThan(0.05);
    expect(magnus(17.625, 243.04)(0, 50)).toBeCloseTo(-9.196, 3);
    for (const [air, humidity] of [
      [5, 40],
      [10, 30],
      [2, 70],
    ] as const) {
      const here = dewPoint(air, humidity);
      expect(here.frost).toBe(true);
      expect(Math.abs(here.celsius - psychrolib.GetTDewPointFromRelHum(air, humidity / 100))).toBeLessThan(0.05);
    }
  });

  it('the worked example of coating practice: 18 degrees and 75 % ask for a surface of 16.5', () => {
    expect(dewPoint(18, 75).celsius).toBeCloseTo(13.5, 1);
  });
});
