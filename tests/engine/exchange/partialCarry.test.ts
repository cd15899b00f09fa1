import { describe, expect, it } from 'vitest';
import { holdsOf, partialCarry, readSurvey, unite, writeSurvey } from '../../../src/engine/exchange';
import { nameOf } from '../../../src/engine/record';
import { bodies, first, sculpture, uuid } from '../../files/entries';
import { smallSurvey } from '../../files/smallSurvey';

const { collection, entries } = smallSurvey();
const other = nameOf.sculpture(uuid(60));
const otherSurveyor = nameOf.surveyor(uuid(61));
const home = { within: collection };
const all = [
  ...entries,
  first(160, other, 'sculpture', { number: 'Q-02', title: 'Other work' }, { within: other, by: otherSurveyor }),
  first(161, otherSurveyor, 'surveyor', { role: 'Guest' }, home),
  first(162, nameOf.personName(otherSurveyor), 'name', { surveyor: otherSurveyor, name: 'Guest Invented' }, home),
];
const kinds = (list: readonly { readonly kind: string }[]) => new Set(list.map((e) => e.kind));
const text = (list: typeof all | readonly (typeof all)[number][]) =>
  new TextDecoder().decode(writeSurvey(collection, list));

/** What goes with what is left out, where it is more than one kind. */
const along: Readonly<Record<string, readonly string[]>> = {
  places: ['place', 'climate', 'keptWhere'],
  access: ['access', 'accessSheet', 'keptWhere'],
  money: [
    'moneyRules',
    'option',
    'quote',
    'fund',
    'gift',
    'bid',
    'bidScore',
    'yearPlan',
    'decision',
    'tripwireAnswer',
    'paperIssued',
  ],
};

/** What is planned for all works together, and spoken of by none. */
const ofAllWorks = new Set(['product', 'groundsAgreement', 'yearPlan', 'sitePlan', 'listTicks', 'moneyRules']);

describe('A part of the survey', () => {
  it('of nothing left out is the whole', () => {
    expect(partialCarry(all).entries).toEqual(all);
    expect(partialCarry(all).keptAtHome).toEqual([]);
  });

  it('of one sculpture takes all its versions, the collection with what was erased in it, and only the people it speaks of', () => {
    const { entries: taken } = partialCarry(all, { sculptures: [sculpture] });
    expect(taken).toEqual(entries.filter((e) => !ofAllWorks.has(e.kind)));
    const { entries: theirs } = partialCarry(all, { sculptures: [other] });
    expect(theirs.map((e) => e.thing).sort()).toEqual(
      [
        collection,
        nameOf.scale(collection),
        nameOf.holdRules(collection),
        nameOf.climate(collection),
        other,
        otherSurveyor,
        nameOf.personName(otherSurveyor),
        nameOf.erasure(uuid(17)),
      ].sort(),
    );
  });

  it.each([
    ['names', 'name', 'Ödön Invented"}'],
    ['places', 'place', 'By the pond'],
    ['access', 'access', 'Key at the gate'],
    ['insert values', 'insertValue', '12500'],
    ['money', 'gift', 'A family'],
  ] as const)('without %s holds none, in no version', (without, kind, secret) => {
    const whole = partialCarry(all);
    const part = partialCarry(all, { without: [without] });
    expect(kinds(part.entries).has(kind)).toBe(false);
    expect(part.holds.some((held) => held.what === kind)).toBe(false);
    expect(whole.holds.some((held) => held.what === kind)).toBe(true);
    expect(text(whole.entries)).toContain(secret);
    if (without !== 'names') expect(text(part.entries)).not.toContain(secret);
    const out = new Set<string>(along[without] ?? [kind]);
    expect(part.entries.length).toBe(all.filter((e) => !out.has(e.kind)).length);
  });

  it('without names says that people are still named in what others wrote', () => {
    const { holds } = partialCarry(entries, { without: ['names'] });
    expect(holds).toContainEqual({ what: 'persons named in entries', count: 26 });
  });

  it('without money says that sums stand in entries that go all the same: what a treatment cost, a day of the lift', () => {
    const held = (without: 'money'[]) =>
      partialCarry(all, { without }).holds.find(({ what }) => what === 'sums of money in entries');
    expect(held([])).toBeUndefined();
    expect(held(['money'])).toEqual({ what: 'sums of money in entries', count: 1 });
    const waxed = first(170, nameOf.treatment(uuid(70)), 'treatment', {
      ...{ sculpture, type: 'wax', date: '2026-05-21', zones: [], cost: { minor: 90_000, currency: 'EUR' } },
    });
    expect(partialCarry([...all, waxed], { without: ['money'] }).holds).toContainEqual({
      what: 'sums of money in entries',
      count: 2,
    });
  });

  it('is a sound file by itself, and joins the whole again without a trace', () => {
    const part = partialCarry(all, {
      sculptures: [sculpture],
      without: ['names', 'places', 'access', 'insert values'],
    });
    expect(readSurvey(writeSurvey(collection, part.entries))).toMatchObject({ ok: true });
    const back = unite(part.entries, all);
    expect(back.ok && text(back.entries)).toBe(text(all));
  });

  it('names what it speaks of and leaves at home', () => {
    const visit = { ...entries[13]!, body: bodies.visit({ photos: [`photo/${'cd'.repeat(32)}`] }) };
    expect(partialCarry([visit]).keptAtHome).toContain(`photo/${'cd'.repeat(32)}`);
  });

  it('lists what it holds by things, not by versions of them', () => {
    expect(holdsOf(entries)).toContainEqual({ what: 'finding', count: 1 });
    expect(holdsOf([])).toEqual([]);
  });
});
