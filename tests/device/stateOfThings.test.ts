import { expect, test } from 'vitest';
import { stateOfAll, stateOfThings } from '../../src/device/stateOfThings';
import type { Current } from '../../src/engine/record';
import { assemble } from '../../src/engine/record';
import { entry } from './store/batches';

const said = (...all: readonly ReturnType<typeof entry>[]): readonly Current[] => [
  ...assemble(all.map((one, n) => ({ ...one, device: 'd', n }))).values(),
];
const zone = entry('z1', 'zone/1', {});
const bid = entry('b1', 'bid/1', {});

test('a bid, a fund or a decision that comes gives the record another name, as a finding does', () => {
  const before = stateOfThings(said(zone));
  for (const more of ['bid/1', 'fund/1', 'decision/1', 'finding/1'])
    expect(stateOfThings(said(zone, entry('m1', more, {}))), more).not.toBe(before);
});

test('a bid that is changed or taken away gives it another name again', () => {
  const names = [
    said(zone, bid),
    said(zone, bid, entry('b2', 'bid/1', { who: 'x' }, ['b1'])),
    said(zone, bid, { ...entry('b3', 'bid/1', {}, ['b1']), gone: true }),
  ].map(stateOfThings);
  expect(new Set(names).size).toBe(3);
  expect(names[2]).toBe(stateOfThings(said(zone)));
});

test('a note that a copy was given out leaves it as it was, or each copy would be old with its own note', () => {
  expect(stateOfThings(said(zone, entry('p1', 'paperIssued/1', {})))).toBe(stateOfThings(said(zone)));
});

test('it is the same in whatever order the entries came', () => {
  const all = [zone, bid, entry('b2', 'bid/1', { who: 'x' }, ['b1']), entry('f1', 'finding/1', {})];
  expect(stateOfThings(said(...all.toReversed()))).toBe(stateOfThings(said(...all)));
  expect(stateOfAll(['x', 'y'])).toBe(stateOfAll(['y', 'x']));
  expect(stateOfAll(['x', 'y'])).not.toBe(stateOfAll(['x', 'z']));
});
