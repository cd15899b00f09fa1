import { describe, expect, it } from 'vitest';
import { againstAgreed, againstLastYear, isCompared, spotsOf } from '../../../src/engine/colour';
import type { BodyOf, Thing } from '../../../src/engine/record';

const values = (L: number) => [
  { L, a: -4, b: 10 },
  { L: L + 0.3, a: -4.1, b: 10.2 },
  { L: L - 0.3, a: -3.9, b: 9.8 },
];
const usual = { illuminant: 'D65', observer: '10', geometry: 'd/8 included', aperture: 8, surface: 'dry' } as const;
const thing = <K extends 'reading' | 'agreedColour' | 'treatment'>(name: string, body: BodyOf<K>) =>
  ({ thing: name, body, heads: [], lead: {} }) as unknown as Thing<K>;
const reading = (date: string, L: number, fields: Partial<BodyOf<'reading'>> = {}) =>
  thing<'reading'>(`reading/${date}`, {
    sculpture: 'sculpture/1',
    quantity: 'colour',
    zone: 'zone/a',
    date,
    values: values(L),
    ...usual,
    ...fields,
  });
const agreed = (name: string, date: string, L: number, fields: Partial<BodyOf<'agreedColour'>> = {}) =>
  thing<'agreedColour'>(`agreedColour/${name}`, {
    sculpture: 'sculpture/1',
    name,
    date,
    by: 'the estate',
    value: { L, a: -4, b: 10 },
    illuminant: 'D65',
    observer: '10',
    geometry: 'd/8 included',
    aperture: 8,
    ...fields,
  });
const treatment = (date: string, type: string, zones: string[] = []) =>
  thing<'treatment'>(`treatment/${date}`, { sculpture: 'sculpture/1', zones, type, date });
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);
const refusedOf = (compared: object | undefined) => {
  if (!compared || !('refused' in compared)) throw new Error('a figure was told');
  return codes(compared.refused as { code: string }[]);
};
const told = (compared: Parameters<typeof isCompared>[0] | undefined) => {
  if (!compared || !isCompared(compared)) throw new Error('no figure was told');
  return compared;
};

describe('spots', () => {
  it('are told by zone and words, however these were typed; the one read last comes first, its earliest reading first', () => {
    const spots = spotsOf([
      reading('2026-05-12', 31, { position: 'Third hole of the template' }),
      reading('2022-05-10', 30, { position: 'third  hole of the Template ' }),
      reading('2024-05-10', 40, { zone: 'zone/b', position: 'Third hole of the template' }),
    ]);
    expect(spots.map(({ about, readings }) => [about, readings.map(({ body }) => body.date)])).toEqual([
      ['zone/a', ['2022-05-10', '2026-05-12']],
      ['zone/b', ['2024-05-10']],
    ]);
    expect(spots[0]?.position).toBe('Third hole of the template');
  });

  it('of a sentinel is the sentinel, not its zone', () => {
    expect(spotsOf([reading('2026-05-12', 31, { sentinel: 'sentinel/1' })])[0]?.about).toBe('sentinel/1');
  });
});

describe('against what was agreed', () => {
  it('holds the colour agreed last by that day, for the zone before the whole work', () => {
    const all = [
      agreed('work', '2020-01-01', 40),
      agreed('old', '2021-01-01', 20),
      agreed('zone', '2022-01-01', 30, { zone: 'zone/a' }),
      agreed('later', '2027-01-01', 50, { zone: 'zone/a' }),
    ];
    expect(againstAgreed(reading('2026-05-12', 31), all, 'zone/a')?.agreed.body.name).toBe('zone');
    expect(againstAgreed(reading('2026-05-12', 31), all, 'zone/b')?.agreed.body.name).toBe('old');
    expect(againstAgreed(reading('2019-05-12', 31), all, 'zone/a')).toBeNull();
  });

  it('is a figure where it was read in the same way, and none where it was not', () => {
    const alike = againstAgreed(reading('2026-05-12', 32), [agreed('card', '2024-06-12', 30)], 'zone/a');
    expect(told(alike?.compared).parts.L).toBeCloseTo(2, 10);
    const other = againstAgreed(
      reading('2026-05-12', 32),
      [agreed('card', '2024-06-12', 30, { illuminant: 'C', observer: '2' })],
      'zone/a',
    );
    expect(refusedOf(other?.compared)).toEqual(['colour: other illuminant', 'colour: other observer']);
  });

  it('takes, of one panel read in two ways, the way that fits', () => {
    const both = [
      agreed('under C', '2024-06-12', 30, { illuminant: 'C', observer: '2' }),
      agreed('under D65', '2024-06-12', 30),
    ];
    expect(againstAgreed(reading('2026-05-12', 32), both, 'zone/a')?.agreed.body.name).toBe('under D65');
  });

  it('says it where a reading was of a wet surface, for nobody wrote how the panel was', () => {
    const wet = againstAgreed(
      reading('2026-05-12', 32, { surface: 'wet' }),
      [agreed('card', '2024-06-12', 30)],
      'zone/a',
    );
    expect(codes(told(wet?.compared).reasons)).toContain('colour: wetness not known');
  });
});

describe('against last year', () => {
  const now = reading('2026-05-12', 34);

  it('holds the reading before it, and for the first there is none', () => {
    const before = [reading('2022-05-12', 20), reading('2024-05-12', 30), now];
    const against = againstLastYear(now, before);
    expect(against?.earlier.body.date).toBe('2024-05-12');
    expect(told(against?.compared).parts.L).toBeCloseTo(4, 10);
    expect(againstLastYear(now, [now])).toBeNull();
  });

  it('passes over one made in another way, and says so; tells no figure where none fits', () => {
    const other = reading('2024-05-12', 30, { geometry: '45/0' });
    const against = againstLastYear(now, [reading('2022-05-12', 30), other]);
    expect(against?.earlier.body.date).toBe('2022-05-12');
    expect(told(against?.compared).reasons).toContainEqual({
      code: 'colour: passed over',
      params: { date: '2024-05-12' },
    });
    const none = againstLastYear(now, [other]);
    expect(none?.earlier.thing).toBe(other.thing);
    expect(refusedOf(none?.compared)).toEqual(['colour: other geometry']);
  });

  it('names the waxing in between, of this zone or the whole work, and no other', () => {
    const done = [treatment('2025-06', 'wax'), treatment('2025', 'wash', ['zone/b']), treatment('2023-06-01', 'wax')];
    const against = againstLastYear(now, [reading('2024-05-12', 30)], done, 'zone/a');
    expect(told(against?.compared).reasons.filter(({ code }) => code === 'colour: done in between')).toEqual([
      { code: 'colour: done in between', params: { treatment: 'wax', date: '2025-06' } },
    ]);
  });

  it('tells no change across work that made another surface of it', () => {
    const done = [treatment('2025-06-13', 'repatination', ['zone/a'])];
    const earlier = [reading('2024-05-12', 30)];
    expect(refusedOf(againstLastYear(now, earlier, done, 'zone/a')?.compared)).toEqual([
      'colour: another surface since',
    ]);
    expect(told(againstLastYear(now, earlier, done, 'zone/b')?.compared).value).toBeGreaterThan(0);
  });

  it('warns of another instrument, but not of the same one typed otherwise', () => {
    const named = (instrument: string, date: string) => reading(date, 30, { instrument });
    const warns = (one: string, other: string) =>
      codes(told(againstLastYear(named(one, '2026-05-12'), [named(other, '2024-05-12')])?.compared).reasons).includes(
        'colour: other instrument',
      );
    expect(warns('Sphere no. 3', 'Sphere no. 7')).toBe(true);
    expect(warns('Sphere no. 3', ' sphere  No. 3')).toBe(false);
  });
});
