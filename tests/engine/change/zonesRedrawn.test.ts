import { describe, expect, test } from 'vitest';
import { thenAndNow } from '../../../src/engine/change';
import { areaVersion, codes, invented, roundName, zoneName } from './invented';

const compare = (record: ReturnType<typeof invented>) => thenAndNow(record, roundName(0), roundName(1));

describe('a zone split between the two rounds', () => {
  const splitInTwo = (left: number | 'nothing' | 'not looked', right: number) =>
    invented({
      zones: {
        P: {
          m2: 4,
          split: {
            on: '2025-09-01',
            into: [
              { zone: zoneName('L'), share: 0.25 },
              { zone: zoneName('R'), share: 0.75 },
            ],
          },
        },
        L: { m2: 1, since: '2025-09-01' },
        R: { m2: 3, since: '2025-09-01' },
      },
      rounds: [
        { date: '2025-05-10', saw: { P: [{ cover: 0.3 }] } },
        {
          date: '2026-05-10',
          saw: { L: typeof left === 'number' ? [{ cover: left }] : left, R: [{ cover: right }] },
        },
      ],
    });

  test('is told under the old zone: p = sum A p / sum A', () => {
    const t = compare(splitInTwo(0.7, 0.1));
    expect(t.zones).toHaveLength(1);
    expect(t.zones[0]).toMatchObject({
      zone: zoneName('P'),
      zonesThen: [zoneName('P')],
      zonesNow: [zoneName('L'), zoneName('R')],
    });
    expect(t.findings[0]?.later.coverage?.value).toBeCloseTo((1 * 0.7 + 3 * 0.1) / 4, 12);
    expect(t.findings[0]?.series).toBe('P/even-green-film/metal');
    expect(codes(t.findings[0]?.reasons ?? [])).toContain('change: zone split or joined');
    expect(t.sculpture.active.green.later.value).toBeCloseTo(1, 12);
    expect(t.sculpture.active.green.earlier.value).toBeCloseTo(1.2, 12);
  });

  test('carries the errors of its parts by their share of the area', () => {
    const slope = (p: number) => p * (1 - p);
    const variance = (p: number, bin: number) => 0.09 + (0.005 / slope(p)) ** 2 + (bin / slope(p)) ** 2 / 12;
    const p = 0.25;
    const own = Math.hypot(
      0.25 * slope(0.7) * Math.sqrt(variance(0.7, 0.2)),
      0.75 * slope(0.1) * Math.sqrt(variance(0.1, 0.05)),
    );
    const eye = 0.25 * slope(0.7) + 0.75 * slope(0.1);
    const logit = (x: number) => Math.log(x / (1 - x));
    const error = Math.sqrt(variance(0.3, 0.1) + (own / slope(p)) ** 2 + 0.15 ** 2 * (1 + (eye / slope(p)) ** 2));
    expect(compare(splitInTwo(0.7, 0.1)).findings[0]?.z).toBeCloseTo((logit(p) - logit(0.3)) / error, 9);
  });

  test('splitting alone changes nothing', () => {
    const t = compare(splitInTwo(0.3, 0.3));
    expect(t.findings[0]?.z).toBeCloseTo(0, 12);
    expect(t.zones[0]?.z).toBeCloseTo(0, 12);
    expect(t.sculpture.active.green.difference.value).toBeCloseTo(0, 12);
  });

  test('nothing found in one part counts as none there', () => {
    expect(compare(splitInTwo('nothing', 0.4)).findings[0]?.later.coverage?.value).toBeCloseTo(0.3, 12);
  });

  test('with one part not looked at, the old zone cannot be compared', () => {
    const t = compare(splitInTwo('not looked', 0.4));
    expect(t.zones[0]).toMatchObject({ verdict: 'not comparable' });
    expect(codes(t.zones[0]?.reasons ?? [])).toEqual(['change: not looked now']);
  });

  test('work done on a part stands beside the old zone', () => {
    const record = splitInTwo(0.7, 0.1);
    const waxed = invented({
      zones: {},
      rounds: [],
      treatments: [{ type: 'wax', date: '2025-10-01', zones: ['L'] }],
    }).treatments;
    expect(compare({ ...record, treatments: waxed }).zones[0]?.between).toHaveLength(1);
  });
});

test('zones joined between the two rounds are told under the new one', () => {
  const record = invented({
    zones: {
      A: { m2: 1, joined: { on: '2025-09-01', into: zoneName('C') } },
      B: { m2: 3, joined: { on: '2025-09-01', into: zoneName('C') } },
      C: { m2: 4, since: '2025-09-01' },
    },
    rounds: [
      { date: '2025-05-10', saw: { A: [{ cover: 0.7 }], B: [{ cover: 0.1 }] } },
      { date: '2026-05-10', saw: { C: [{ cover: 0.3 }] } },
    ],
  });
  const t = compare(record);
  expect(t.zones.map((z) => [z.zone, z.zonesThen])).toEqual([[zoneName('C'), [zoneName('A'), zoneName('B')]]]);
  expect(t.findings[0]?.earlier.coverage?.value).toBeCloseTo(0.25, 12);
});

test('a part split again is still the old zone', () => {
  const record = invented({
    zones: {
      P: {
        m2: 4,
        split: {
          on: '2025-06-01',
          into: [
            { zone: zoneName('L'), share: 0.5 },
            { zone: zoneName('R'), share: 0.5 },
          ],
        },
      },
      L: {
        m2: 2,
        since: '2025-06-01',
        split: {
          on: '2025-08-01',
          into: [
            { zone: zoneName('M'), share: 0.5 },
            { zone: zoneName('N'), share: 0.5 },
          ],
        },
      },
      R: { m2: 2, since: '2025-06-01' },
      M: { m2: 1, since: '2025-08-01' },
      N: { m2: 1, since: '2025-08-01' },
    },
    rounds: [
      { date: '2025-05-10', saw: { P: [{ cover: 0.2 }] } },
      { date: '2026-05-10', saw: { R: [{ cover: 0.1 }], M: [{ cover: 0.2 }], N: [{ cover: 0.4 }] } },
    ],
  });
  const t = compare(record);
  expect(t.zones[0]?.zonesNow).toEqual([zoneName('R'), zoneName('M'), zoneName('N')]);
  expect(t.findings[0]?.later.coverage?.value).toBeCloseTo(0.2, 12);
});

test('a zone new since then has nothing to be compared with', () => {
  const record = invented({
    zones: { A: {}, B: { since: '2025-09-01' } },
    rounds: [
      { date: '2025-05-10', saw: { A: 'nothing' } },
      { date: '2026-05-10', saw: { A: 'nothing', B: [{ cover: 0.5 }] } },
    ],
  });
  const zone = compare(record).zones.find((z) => z.zone === zoneName('B'));
  expect(zone?.verdict).toBe('not comparable');
  expect(codes(zone?.reasons ?? [])).toEqual(['change: zone new since']);
});

describe('a zone measured anew between the two rounds', () => {
  const measured = (m2: number, substrate = 'bronze') =>
    invented({
      zones: { A: { versions: [areaVersion(1, '2000-01-01', 1), areaVersion(2, '2025-09-01', m2, substrate)] }, B: {} },
      rounds: [
        { date: '2025-05-10', saw: { A: [{ cover: 0.3 }], B: 'nothing' } },
        { date: '2026-05-10', saw: { A: [{ cover: 0.3 }], B: 'nothing' } },
      ],
    });

  test('a new area says so and makes no change: both rounds take the later area', () => {
    const t = compare(measured(2));
    expect(t.zones[0]?.reasons).toContainEqual({
      code: 'change: zone area changed',
      params: { zone: zoneName('A'), earlier: 1, later: 2 },
    });
    expect(t.sculpture.active.green).toMatchObject({ earlier: { value: 0.6 }, later: { value: 0.6 }, z: 0 });
    expect(t.sculpture.index.earlier?.value).toBeCloseTo(t.sculpture.index.later?.value ?? 0, 12);
  });

  test('a new substrate and a new outline are said', () => {
    expect(codes(compare(measured(1, 'iron')).zones[0]?.reasons ?? [])).toContain('change: zone substrate changed');
    expect(codes(compare(measured(1)).zones[0]?.reasons ?? [])).toContain('change: zone redrawn');
  });
});
