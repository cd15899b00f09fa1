import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/engine/record';
import { chosenBeforehand, commonAncestor, settledBody, sideBySide } from '../../../src/screens/settle/sideBySide';

const entry = (id: string, replaces: string[], body: Record<string, unknown>): Entry => ({
  id,
  thing: 'sculpture/1',
  kind: 'sculpture',
  within: 'sculpture/1',
  v: 1,
  at: '2026-05-12T10:00:00.000+00:00',
  by: '',
  device: 'd',
  n: 0,
  deed: id,
  replaces,
  body,
});

describe('two versions side by side', () => {
  const first = entry('a', [], { title: 'Heron', maker: 'unknown' });
  const middle = entry('b', ['a'], { title: 'Heron', maker: 'unknown', date: '1961' });
  const one = entry('c', ['b'], { title: 'Grey heron', maker: 'unknown', date: '1961' });
  const two = entry('e', ['d'], { title: 'Heron', maker: 'unknown', date: '1962', note: 'plaque lost' });
  const between = entry('d', ['b'], { title: 'Heron', maker: 'unknown', date: '1962' });
  const all = [first, middle, one, between, two];

  it('finds the nearest entry both replace, not the first of all', () => {
    expect(commonAncestor(all, one, two)?.id).toBe('b');
  });

  it('has no ancestor where both were begun apart', () => {
    expect(commonAncestor([], entry('x', [], {}), entry('y', [], {}))).toBeUndefined();
  });

  it('chooses beforehand only what one side changed alone', () => {
    const rows = sideBySide(one, two, middle);
    expect(chosenBeforehand(rows)).toEqual({ title: 'one', date: 'two', note: 'two' });
    expect(settledBody(rows, chosenBeforehand(rows))).toEqual({
      title: 'Grey heron',
      maker: 'unknown',
      date: '1962',
      note: 'plaque lost',
    });
  });

  it('leaves a field both changed to the person, and first in the list', () => {
    const rows = sideBySide(one, entry('f', ['b'], { ...two.body, title: 'The heron' }), middle);
    expect(rows[0]?.field).toBe('title');
    expect(settledBody(rows, chosenBeforehand(rows))).toBeUndefined();
    expect(settledBody(rows, { ...chosenBeforehand(rows), title: 'two' })?.title).toBe('The heron');
  });

  it('lets a field that one side took away go, without writing an empty one', () => {
    const rows = sideBySide(entry('g', ['b'], { title: 'Heron', maker: 'unknown' }), middle, middle);
    const body = settledBody(rows, chosenBeforehand(rows));
    expect(body).toEqual({ title: 'Heron', maker: 'unknown' });
    expect(body && 'date' in body).toBe(false);
  });

  it('does not take the order of keys inside a value for a change', () => {
    const a = entry('h', ['b'], { coverage: { value: 0.1, low: 0.07 } });
    const b = entry('i', ['b'], { coverage: { low: 0.07, value: 0.1 } });
    expect(sideBySide(a, b, undefined)[0]?.changedBy).toBe('same');
  });
});
