import { expect, test } from 'vitest';
import {
  arrivalOfHeat,
  diffusivity,
  glassBound,
  glassDifference,
  heatUpTime,
  ladderAngle,
  ladderFoot,
  ladderTo,
  reachOfHeat,
  shareAtReach,
} from '../../src/engine/heat';
import {
  exposureLimits,
  glassData,
  glassKindOf,
  heatOfMetals,
  heightRules,
  hotDayDefaults,
  hotWorkRule,
  torchShare,
} from '../../src/engine/trade';

/** EN 572-1 data of a glass maker; a data sheet of annealed soda-lime glass; a weathered edge taken as 20 MPa. K, two places. */
test.each([
  ['float', 57.14, 71.43],
  ['data sheet', 50.53, 65.62],
  ['weathered', 25.4, 31.75],
])('glass, %s: the difference its strength bears is %f K held all round and %f K at an edge', (id, plane, edge) => {
  const row = glassData.find((data) => data.id === id)!;
  const bears = glassDifference(row);
  expect(bears.plane).toBeCloseTo(plane, 2);
  expect(bears.edge).toBeCloseTo(edge, 2);
});

test('the practice limit of 40 K leads for annealed glass and theory stands behind it, never above', () => {
  const { value, reasons } = glassBound(glassKindOf('annealed')!, glassData);
  expect(value).toBe(40);
  expect(reasons[0]).toEqual({ code: 'heat: practice limit leads', params: { limit: 40 } });
  const theory = reasons[1]!.params as { low: number; high: number; weathered: number };
  expect(theory.low).toBeCloseTo(50.53, 2);
  expect(theory.high).toBeCloseTo(57.14, 2);
  expect(theory.weathered).toBeCloseTo(25.4, 2);
  expect(value).toBeLessThan(theory.low);
});

test('toughened glass has its own limit of 200 K, and nothing is said of it from data of annealed glass', () => {
  expect(glassBound(glassKindOf('toughened')!, glassData)).toEqual({
    value: 200,
    reasons: [{ code: 'heat: practice limit leads', params: { limit: 200 } }],
  });
});

test.each(['unknown', 'cast', 'damaged'])(
  'no number is given for glass that is %s: out, or to its conservator',
  (id) => {
    const bound = glassBound(glassKindOf(id)!, glassData);
    expect(bound.value).toBeUndefined();
    expect(bound.reasons.map(({ code }) => code)).toEqual(['heat: glass not known']);
  },
);

/** 29 CFR 1926.1053(b)(5)(i): a quarter of the working length along the ladder. */
test('a ladder stands at 75.52 degrees, by its working length and not by the height', () => {
  expect(ladderAngle).toBeCloseTo(75.52, 2);
  expect(ladderFoot(4)).toBe(1);
  const ladder = ladderTo(4);
  expect(Math.atan2(4, ladder.foot) * (180 / Math.PI)).toBeCloseTo(75.52, 2);
  expect(Math.hypot(4, ladder.foot)).toBeCloseTo(ladder.length, 12);
  // A quarter of the height would be 75.96 degrees: another rule.
  expect(Math.atan(4) * (180 / Math.PI)).toBeCloseTo(75.96, 2);
  expect(ladder.foot).toBeGreaterThan(1);
});

/** 29 CFR 1910.252(a)(2), 1915.504; NFPA 51B 2019 from memory. */
test('clearance and watch of hot work are data with their source, and a new card starts on the strict side of them', () => {
  expect(hotWorkRule('clear zone')).toMatchObject({ value: 10.7, unit: 'm', source: { sure: 'seen' } });
  expect(35 * 0.3048).toBeCloseTo(hotWorkRule('clear zone').value, 1);
  expect(hotWorkRule('watch at least')).toMatchObject({ value: 30, source: { sure: 'seen' } });
  expect(hotWorkRule('watch since 2019')).toMatchObject({ value: 60, source: { sure: 'from memory' } });
  expect(hotDayDefaults.clearZone).toBeGreaterThanOrEqual(hotWorkRule('clear zone').value);
  expect(hotDayDefaults.watchMinutes).toBeGreaterThanOrEqual(hotWorkRule('watch since 2019').value);
});

/** OSHA and NIOSH tables. */
test.each([
  ['nitrogen dioxide', '5 ppm', '1 ppm', '13 ppm'],
  ['nitric acid', '2 ppm', '2 ppm', '25 ppm'],
  ['copper fume', '0.1 mg/m³', '0.1 mg/m³', ''],
  ['copper dust', '1 mg/m³', '1 mg/m³', '100 mg/m³'],
  ['silica', '50 µg/m³', '50 µg/m³', '25 mg/m³'],
  ['propane', '1000 ppm', '1000 ppm', '2100 ppm'],
])('limits of %s in the air: %s, %s, %s', (id, pel, rel, idlh) => {
  const row = exposureLimits.find((limit) => limit.id === id)!;
  expect(row.pel.startsWith(pel)).toBe(true);
  expect(row.rel.startsWith(rel)).toBe(true);
  expect(row.idlh.startsWith(idlh)).toBe(true);
  expect(row.source.text).not.toBe('');
});

/** 1 ppm of a gas at 25 °C and 101.325 kPa is M / 24.465 mg/m3. */
test('the two units of the limits in the air agree', () => {
  const mg = (ppm: number, molar: number) => (ppm * molar) / 24.465;
  expect(mg(5, 46.006)).toBeCloseTo(9, 0);
  expect(mg(1, 46.006)).toBeCloseTo(1.88, 2);
  expect(mg(1, 63.013)).toBeCloseTo(2.58, 2);
});

/** 29 CFR 1926.451(g)(1), (f)(3); 1926.501(b) and 1910.28(b) from memory. Feet as printed. */
test.each([
  ['fall scaffold', 10],
  ['fall building', 6],
  ['fall usual', 4],
  ['rails', 3],
])('height of the rule "%s" is %i feet', (id, feet) => {
  const metres = heightRules.find((rule) => rule.id === id)?.value ?? Number.NaN;
  expect(Math.abs(metres - feet * 0.3048)).toBeLessThan(0.06);
});

/** Own finite differences, explicit, of a slab whose face is held at 1: cells of dx, steps of dx^2 / (4 alpha). */
const shareAtDepth = (alpha: number, seconds: number, depth: number): number => {
  const cells = 400;
  const dx = (depth * 6) / cells;
  const dt = (0.25 * dx * dx) / alpha;
  let heat = new Float64Array(cells + 1);
  heat[0] = 1;
  for (let t = 0; t < seconds; t += dt) {
    const next = Float64Array.from(heat);
    for (let i = 1; i < cells; i++) next[i] = heat[i]! + 0.25 * (heat[i - 1]! - 2 * heat[i]! + heat[i + 1]!);
    heat = next;
  }
  const at = depth / dx;
  const i = Math.floor(at);
  return heat[i]! + (at - i) * (heat[i + 1]! - heat[i]!);
};

test.each(heatOfMetals.map(({ id }) => id))(
  'reach in %s: a finite-difference slab has a sixth of the rise there, erfc(1)',
  (id) => {
    const metal = heatOfMetals.find((row) => row.id === id)!;
    const reach = reachOfHeat(metal, 120);
    if (!reach.ok) throw new Error('no reach');
    for (const side of ['low', 'high'] as const)
      expect(shareAtDepth(diffusivity(metal)[side], 120, reach.figure[side])).toBeCloseTo(shareAtReach, 3);
  },
);

test('the time heat takes to a place is the reach turned round', () => {
  const metal = heatOfMetals[0]!;
  const there = arrivalOfHeat(metal, 0.1);
  if (!there.ok) throw new Error('no time');
  const back = reachOfHeat(metal, there.figure.low);
  if (!back.ok) throw new Error('no reach');
  expect(back.figure.high).toBeCloseTo(0.1, 12);
});

test('heating a plate: the closed form is what small steps of heat add up to', () => {
  const metal = heatOfMetals[0]!;
  const plate = { metal, thickness: 0.006, area: 0.02, rise: 180, power: 20_000 };
  const time = heatUpTime(plate);
  if (!time.ok) throw new Error('no time');
  const stepped = (share: number): number => {
    const dt = 0.001;
    let rise = 0;
    let t = 0;
    for (; rise < plate.rise; t += dt)
      rise += (share * plate.power * dt) / (metal.density * metal.specificHeat * plate.thickness * plate.area);
    return t;
  };
  expect(time.figure.low).toBeCloseTo(stepped(torchShare.high), 1);
  expect(time.figure.high).toBeCloseTo(stepped(torchShare.low), 1);
  // 8800 * 380 * 0.006 * 0.02 * 180 / (0.4 * 20000)
  expect(time.figure.low).toBeCloseTo(9.03, 2);
});

test('a sum with a size left out or below nought is refused and not guessed', () => {
  const metal = heatOfMetals[0]!;
  expect(heatUpTime({ metal, thickness: 0, area: 1, rise: 180, power: 20_000 })).toEqual({
    ok: false,
    reason: { code: 'heat: figure not possible', params: { what: 'thickness' } },
  });
  expect(reachOfHeat(metal, -1).ok).toBe(false);
  expect(arrivalOfHeat(metal, Number.NaN).ok).toBe(false);
});
