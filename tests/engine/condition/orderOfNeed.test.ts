import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classesOf, type NeedOf, orderOfNeed, scoreRound } from '../../../src/engine/condition';
import type { SculptureRecord } from '../../../src/engine/record';
import {
  checkThing,
  classSetThing,
  findingBody,
  type Made,
  onLadder,
  recordOf,
  roundName,
  sculpture,
  zoneName,
  zoneThing,
} from './madeUp';

const green = (label: string) => findingBody('even-green-film', { coverage: onLadder(label) });
const mounds = findingBody('pale-powdery-mounds', { count: 'one' });
const zones = [zoneThing('A', 1), zoneThing('B', 3), zoneThing('C', 1, 2), zoneThing('D', 1)];

const needOf = (made: readonly Made[], more: Partial<SculptureRecord> = {}): NeedOf => {
  const record = recordOf(zones, made, more);
  return { record, score: scoreRound(record, roundName(2026)), classes: classesOf(record, roundName(2026)) };
};
const called = (name: string, need: NeedOf): NeedOf => ({
  ...need,
  record: { ...need.record, sculpture: { ...need.record.sculpture, thing: `sculpture/${name}` } },
});
const letters = (rows: readonly { readonly zone?: string }[]): string =>
  rows.map(({ zone }) => zone?.slice(-1)).join('');
const lastCode = (reasons: readonly { readonly code: string }[]): string | undefined => reasons.at(-1)?.code;

const all: readonly Made[] = [
  { zone: 'A', findings: [green('20')] },
  { zone: 'B', findings: [green('20')] },
  { zone: 'C', findings: [green('20')] },
  { zone: 'D', findings: [mounds] },
];

describe('the order of need', () => {
  it('goes by urgency first, then by area x significance x what is missing', () => {
    const order = orderOfNeed([needOf(all)]);
    expect(letters(order.zones)).toBe('DBCA');
    expect(order.zones.map(({ rank }) => rank)).toEqual([1, 2, 3, 4]);
    expect(order.zones.map(({ reasons }) => lastCode(reasons))).toEqual([
      'need: before the next by urgency',
      'need: before the next by burden',
      'need: before the next by burden',
      'need: last',
    ]);
  });

  it('gives the burden in m2 x points with a range from coverage and area', () => {
    const [first] = orderOfNeed([needOf([{ zone: 'B', findings: [green('20')] }])]).zones;
    const z = 100 * (1 - 0.45 * 0.4 * 0.85 * Math.sqrt(0.2));
    expect(first?.burden.value).toBeCloseTo(3 * (100 - z), 10);
    expect(first?.burden.low).toBeLessThan(first?.burden.value ?? 0);
    expect(first?.burden.high).toBeGreaterThan(first?.burden.value ?? 0);
    expect(first?.reasons.map(({ code }) => code)).toContain('need: burden');
    expect(first?.reasons).toContainEqual({ code: 'not yet known', params: { what: 'forecast' } });
  });

  it('puts people above every list, the zones below still in order', () => {
    const order = orderOfNeed([
      called('calm', needOf(all)),
      called('loose', needOf([{ zone: 'A' }], { personChecks: [checkThing('1', { zone: zoneName('A') })] })),
    ]);
    expect(order.people).toHaveLength(1);
    expect(order.people[0]).toMatchObject({
      sculpture: 'sculpture/loose',
      zone: zoneName('A'),
      check: 'personCheck/1',
    });
    expect(order.sculptures[0]).toMatchObject({ sculpture: 'sculpture/loose', urgency: 3 });
  });

  it('never ranks a zone nobody judged, and says which were left out', () => {
    const order = orderOfNeed([
      needOf([
        { zone: 'A', findings: [green('20')] },
        { zone: 'B', state: 'not looked', visit: { reason: 'wet' } },
      ]),
    ]);
    expect(letters(order.zones)).toBe('A');
    expect(order.notRanked.map(({ zone }) => zone)).toEqual([zoneName('B'), zoneName('C'), zoneName('D')]);
  });

  it('follows the urgency a named person set, and says who', () => {
    const classSets = [classSetThing(zoneName('A'), { urgency: 3 })];
    const [first] = orderOfNeed([needOf(all, { classSets })]).zones;
    expect(first?.zone).toBe(zoneName('A'));
    expect(first?.reasons[0]).toEqual({ code: 'need: urgency', params: { urgency: 3, setBy: 'Steward' } });
  });

  it('gives equals one rank and says so', () => {
    const order = orderOfNeed([
      needOf([{ zone: 'A', findings: [green('20')] }, { zone: 'D', findings: [green('20')] }, { zone: 'B' }]),
    ]);
    expect(order.zones.map(({ rank }) => rank)).toEqual([1, 1, 3]);
    expect(lastCode(order.zones[0]?.reasons ?? [])).toBe('need: level with the next');
  });

  it('lets the lower index go first where urgency and burden are the same', () => {
    // Half the area with twice the missing points: the same burden to the last digit.
    const need = needOf(all);
    const [a, b] = need.score.zones;
    if (!a || !b) throw new Error('the round has zones A and B');
    const level = (zone: typeof a, value: number, m2: number) => ({
      ...zone,
      value,
      low: value,
      high: value,
      area: { ...zone.area, m2 },
    });
    const score = { ...need.score, zones: [level(a, 92, 2), level(b, 84, 1)] };
    const order = orderOfNeed([{ ...need, score }]);
    expect(letters(order.zones)).toBe('BA');
    expect(lastCode(order.zones[0]?.reasons ?? [])).toBe('need: before the next by index');
  });

  it('follows the urgency set for the whole in the list of sculptures', () => {
    const classSets = [classSetThing(sculpture, { urgency: 3 })];
    const order = orderOfNeed([called('calm', needOf([{ zone: 'A' }], { classSets })), called('busy', needOf(all))]);
    expect(order.sculptures.map((row) => [row.sculpture, row.urgency])).toEqual([
      ['sculpture/calm', 3],
      ['sculpture/busy', 2],
    ]);
  });

  it('is the same whatever order the works come in', () => {
    const works = ['heron', 'stair', 'geese', 'rope'].map((name, i) => called(name, needOf(all.slice(i))));
    const expected = orderOfNeed(works);
    fc.assert(
      fc.property(fc.shuffledSubarray(works, { minLength: works.length }), (shuffled) => {
        const order = orderOfNeed(shuffled);
        expect(order.zones).toEqual(expected.zones);
        expect(order.sculptures).toEqual(expected.sculptures);
      }),
    );
  });
});
