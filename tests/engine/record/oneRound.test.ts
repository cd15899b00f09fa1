import { describe, expect, it } from 'vitest';
import { assemble, type BodyOf, gather, nameOf, roundsThatMayBeOne } from '../../../src/engine/record';
import { bodies, first, sculpture, uuid } from '../../files/entries';

const one = nameOf.round(uuid(4));
const two = nameOf.round(uuid(5));
const asked = (other: Partial<BodyOf<'round'>>, device = 'tablet-2', mine: Partial<BodyOf<'round'>> = {}) => {
  const record = gather(
    assemble([
      first(1, sculpture, 'sculpture', bodies.sculpture),
      first(4, one, 'round', bodies.round({ date: '2026-05-12', ...mine })),
      first(5, two, 'round', bodies.round({ date: '2026-05-14', ...other }), { device }),
    ]).values(),
  );
  return record && roundsThatMayBeOne(record).map((pair) => [pair.earlier.thing, pair.later.thing]);
};

describe('"Is this one round?" is asked', () => {
  it('of two rounds of one type begun on two devices within two weeks', () => {
    expect(asked({})).toEqual([[one, two]]);
    expect(asked({ date: '2026-05-26' })).toEqual([[one, two]]);
  });

  it('not over a longer time, of other types, or of rounds of one device', () => {
    expect(asked({ date: '2026-05-27' })).toEqual([]);
    expect(asked({ type: 'after treatment' })).toEqual([]);
    expect(asked({}, 'tablet-1')).toEqual([]);
  });

  it('not again once somebody answered', () => {
    expect(asked({ partOf: one })).toEqual([]);
    expect(asked({ apartFrom: [one] })).toEqual([]);
    expect(asked({}, 'tablet-2', { apartFrom: [two] })).toEqual([]);
  });
});
