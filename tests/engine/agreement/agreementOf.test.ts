import { describe, expect, it } from 'vitest';
import { agreementOf, roundsDoneTwice } from '../../../src/engine/agreement';
import { assemble, type BodyOf, type Entry, gather, nameOf, type SculptureRecord } from '../../../src/engine/record';
import { bodies, first, sculpture, uuid } from '../../files/entries';

const zones = [0, 1, 2, 3, 4].map((i) => nameOf.zone(uuid(300 + i)));
const [steward, helper] = [nameOf.surveyor(uuid(400)), nameOf.surveyor(uuid(401))];
const [mine, theirs] = [nameOf.round(uuid(500)), nameOf.round(uuid(501))];

type Said = Readonly<
  Record<
    number,
    'not looked' | 'carried' | readonly [kind: string, cover: number, severity?: BodyOf<'finding'>['severity']][]
  >
>;

const record = (
  said: readonly [Said, Said],
  more: readonly [Partial<BodyOf<'round'>>, Partial<BodyOf<'round'>>] = [{}, {}],
): SculptureRecord => {
  let n = 1;
  const entries: Entry[] = [
    first(n++, sculpture, 'sculpture', bodies.sculpture),
    ...zones.map((zone, i) => first(n++, zone, 'zone', bodies.zone({ letter: 'ABCDE'[i] ?? 'A', order: i }))),
  ];
  [mine, theirs].forEach((round, side) => {
    const day = '2026-05-12';
    entries.push(
      first(
        n++,
        round,
        'round',
        bodies.round({ surveyor: side === 0 ? steward : helper, date: day, ended: day, ...more[side] }),
      ),
    );
    zones.forEach((zone, i) => {
      const own = said[side]?.[i] ?? [];
      const state = typeof own === 'string' ? own : own.length > 0 ? 'found' : 'nothing';
      entries.push(first(n++, nameOf.visit(round, zone), 'visit', { ...bodies.visit(), round, zone, state }));
      if (typeof own === 'string') return;
      for (const [kind, cover, severity = 'slight'] of own) {
        const coverage = { value: cover, low: cover, high: cover, method: 'ladder, adjusted' as const };
        entries.push(
          first(n++, nameOf.finding(round, zone, kind, 'metal'), 'finding', {
            sculpture,
            round,
            zone,
            kind,
            origin: 'metal',
            coverage,
            severity,
            activity: 'unclear',
          }),
        );
      }
    });
  });
  const gathered = gather(assemble(entries).values());
  if (!gathered) throw new Error('no record');
  return gathered;
};

const same: Said = {
  0: [['green-streaks', 0.2, 'moderate']],
  1: [
    ['green-streaks', 0.05],
    ['green-spots', 0.03],
  ],
  2: [['green-spots', 0.4, 'severe']],
  3: [['green-spots', 0.1]],
};

describe('Two surveyors, one round', () => {
  it('who say the same throughout agree in all', () => {
    const found = agreementOf(record([same, same]), mine, theirs);
    expect(found).toMatchObject({ zonesBoth: 5, zonesAll: 5, apart: [] });
    expect(found.kinds).toMatchObject({ both: 5, onlyOne: 0, onlyOther: 0 });
    expect(found.kinds.kappa?.value).toBeCloseTo(1, 12);
    expect(found.severity.kappa?.value).toBeCloseTo(1, 12);
    expect(found.coverage.icc?.value).toBeCloseTo(1, 12);
    expect(found.coverage.whereOneSays20?.value).toBeCloseTo(0.2, 12);
  });

  it('one of whom finds more, says worse and sees double the cover differ just there', () => {
    const other: Said = {
      0: [['green-streaks', 0.35, 'severe']],
      1: [['green-streaks', 0.1]],
      2: [['green-spots', 0.6, 'severe']],
      3: [['green-spots', 0.19]],
      4: [['green-spots', 0.01]],
    };
    const found = agreementOf(record([same, other]), mine, theirs);
    expect(found.kinds).toMatchObject({ both: 4, onlyOne: 1, onlyOther: 1 });
    expect(found.kinds.kappa?.value).toBeLessThan(1);
    expect(found.severity).toMatchObject({ n: 4, alike: 3 });
    expect(found.apart.map(({ zone, kind, why }) => [zones.indexOf(zone), kind, why])).toEqual([
      [1, 'green-spots', 'found by one only'],
      [4, 'green-spots', 'found by one only'],
      [0, 'green-streaks', 'severity'],
      [2, 'green-spots', 'coverage'],
      [1, 'green-streaks', 'coverage'],
      [3, 'green-spots', 'coverage'],
    ]);
    const { icc, whereOneSays20, n } = found.coverage;
    expect(n).toBe(4);
    expect(icc?.value).toBeGreaterThan(0.5);
    expect(icc?.value).toBeLessThan(1);
    expect(whereOneSays20?.value).toBeGreaterThan(0.3);
    expect(whereOneSays20?.low).toBeGreaterThan(0.2);
  });

  it('are compared over what both judged: a zone not looked at or carried by one is in no sum', () => {
    const found = agreementOf(record([same, { ...same, 0: 'not looked', 2: 'carried' }]), mine, theirs);
    expect(found).toMatchObject({ zonesBoth: 3, zonesAll: 5 });
    expect(found.kinds.both).toBe(3);
  });

  it('are told by a sentence where there is nothing to tell by a number', () => {
    const found = agreementOf(record([{}, {}]), mine, theirs);
    expect(found.kinds.kappa).toBeNull();
    expect(found.severity.kappa).toBeNull();
    expect(found.coverage).toMatchObject({ n: 0, icc: null, whereOneSays20: null });
    for (const part of [found.kinds, found.severity, found.coverage]) expect(part.reasons.length).toBeGreaterThan(0);
    expect(JSON.stringify(found)).not.toMatch(/null,"low"|NaN|Infinity/);
    const none = agreementOf(
      record([{ 0: 'not looked', 1: 'not looked', 2: 'not looked', 3: 'not looked', 4: 'not looked' }, same]),
      mine,
      theirs,
    );
    expect(none.reasons.map(({ code }) => code)).toContain('agreement: no zone judged by both');
  });

  it('turned round say the same figures', () => {
    const other: Said = { ...same, 3: [['green-spots', 0.3, 'moderate']], 4: [['green-spots', 0.05]] };
    const both = record([same, other]);
    const [there, back] = [agreementOf(both, mine, theirs), agreementOf(both, theirs, mine)];
    expect(back.kinds.kappa?.value).toBeCloseTo(there.kinds.kappa?.value ?? Number.NaN, 12);
    expect(back.severity.kappa?.value).toBeCloseTo(there.severity.kappa?.value ?? Number.NaN, 12);
    expect(back.coverage.icc?.value).toBeCloseTo(there.coverage.icc?.value ?? Number.NaN, 12);
  });
});

describe('A round done twice', () => {
  it('is two rounds of one type by two named people within two weeks', () => {
    expect(roundsDoneTwice(record([same, same]))).toHaveLength(1);
  });

  it.each([
    ['by one person', { surveyor: steward }],
    ['by somebody not named', { surveyor: '' }],
    ['three weeks later', { date: '2026-06-02' }],
    ['of another type', { type: 'autumn' as const }],
    ['after the wash', { washed: 'after wash' as const }],
  ])('is not: %s', (_, other) => {
    expect(roundsDoneTwice(record([same, same], [{}, other]))).toEqual([]);
  });

  it('is not where no zone was judged by both', () => {
    const [a, b]: [Said, Said] = [
      { 0: 'not looked', 1: 'not looked', 2: 'not looked' },
      { 3: 'not looked', 4: 'carried' },
    ];
    expect(roundsDoneTwice(record([a, b]))).toEqual([]);
  });
});
