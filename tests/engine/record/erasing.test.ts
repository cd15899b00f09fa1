import { describe, expect, it } from 'vitest';
import { erasedBy, isErased, nameOf, sameEntry, withoutErased } from '../../../src/engine/record';
import { entry, sculpture, uuid } from '../../files/entries';
import { erasure } from '../../files/erasures';

const name = nameOf.personName(nameOf.surveyor(uuid(7)));
const hash = 'ab'.repeat(32);

describe('What an erasure takes out', () => {
  it('is every entry it names, and no other', () => {
    const all = [entry(1, { thing: 'look/x' }), entry(2, { thing: 'look/y' }), erasure(3, { entries: [uuid(1)] })];
    expect(withoutErased(all).map((e) => e.id)).toEqual([uuid(2), uuid(3)]);
  });

  it('is all that is said of an erased photo or name, by whomever, also what was said elsewhere meanwhile', () => {
    const erased = erasedBy([erasure(3, { hashes: [hash], names: [name] })]);
    expect(isErased(erased, entry(9, { thing: `photo/${hash}`, device: 'tablet-9' }))).toBe(true);
    expect(isErased(erased, entry(9, { thing: name, device: 'tablet-9' }))).toBe(true);
    expect(isErased(erased, entry(9, { thing: `photo/${'cd'.repeat(32)}` }))).toBe(false);
    expect(isErased(erased, entry(9, { thing: sculpture }))).toBe(false);
  });

  it('is never another erasure, or it would matter who met whom first', () => {
    const all = [erasure(1, { entries: [uuid(2)] }), erasure(2, { entries: [uuid(1), uuid(5)] })];
    expect(withoutErased([...all, entry(5, { thing: 'look/x' })])).toEqual(all);
  });

  it('is heeded in the shape of a later version too, and what is not understood of it does no harm', () => {
    const later = erasure(1, { entries: [uuid(5)], odd: { a: 1 } }, { v: 9 });
    expect(withoutErased([later, entry(5, { thing: 'look/x' })])).toEqual([later]);
    const odd = entry(2, {
      thing: 'erasure/x',
      kind: 'erasure',
      v: 9,
      body: { entries: 7, hashes: [null], names: 'x' },
    });
    expect(withoutErased([odd, entry(5, { thing: 'look/x' })])).toHaveLength(2);
  });

  it('is nothing where nothing was erased: the same list', () => {
    const all = [entry(1, { thing: 'look/x' })];
    expect(withoutErased(all)).toBe(all);
  });

  it('a name list cannot take out a whole sculpture', () => {
    const all = [entry(1, { thing: sculpture }), erasure(3, { names: [sculpture] })];
    expect(withoutErased(all)).toHaveLength(2);
  });
});

describe('The same entry', () => {
  const one = entry(1, { thing: 'look/x', replaces: [uuid(2), uuid(3)], body: { a: 0, b: { c: [1, { d: 'x' }] } } });
  it.each([
    ['fields in another order', { ...one, body: { b: { c: [1, { d: 'x' }] }, a: 0 } }, true],
    ['replaced ids in another order', { ...one, replaces: [uuid(3), uuid(2)] }, true],
    ['a field without a value', { ...one, restores: undefined, body: { ...one.body, e: undefined } }, true],
    ['minus nought for nought', { ...one, body: { ...one.body, a: -0 } }, true],
    ['another number', { ...one, body: { ...one.body, a: 1e-9 } }, false],
    ['null for a missing field', { ...one, body: { ...one.body, e: null } }, false],
    ['a list for an object', { ...one, body: { a: 0, b: { c: { 0: 1, 1: { d: 'x' } } } } }, false],
    ['a name out of the machinery of objects', { ...one, body: { ...one.body, toString: 1 } }, false],
  ])('with %s', (_, other, same) => {
    expect(sameEntry(one, other as typeof one)).toBe(same);
    expect(sameEntry(other as typeof one, one)).toBe(same);
  });
});
