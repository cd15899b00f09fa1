import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/engine/record';
import { chosenBeforehand, settledBody, sideBySide } from '../../../src/screens/settle/sideBySide';

const entry = (id: string, body: Record<string, unknown>): Entry => ({
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
  replaces: [],
  body,
});

describe('versions side by side', () => {
  const before = entry('a', { title: 'Heron', maker: 'unknown', date: '1961' });
  const one = entry('b', { title: 'Grey heron', maker: 'unknown', date: '1961' });
  const two = entry('c', { title: 'Heron', maker: 'unknown', date: '1962', note: 'plaque lost' });

  it('chooses beforehand only what one side changed alone', () => {
    const rows = sideBySide([one, two], before);
    expect(chosenBeforehand(rows)).toEqual({ title: 0, date: 1, note: 1 });
    expect(settledBody(rows, chosenBeforehand(rows))).toEqual({
      title: 'Grey heron',
      maker: 'unknown',
      date: '1962',
      note: 'plaque lost',
    });
  });

  it('leaves a field both changed to the person, first in the list', () => {
    const rows = sideBySide([one, entry('d', { ...two.body, title: 'The heron' })], before);
    expect(rows[0]?.field).toBe('title');
    expect(settledBody(rows, chosenBeforehand(rows))).toBeUndefined();
    expect(settledBody(rows, { ...chosenBeforehand(rows), title: 1 })?.title).toBe('The heron');
  });

  it('lets a field one side took away go, without writing an empty one', () => {
    const rows = sideBySide([entry('e', { title: 'Heron', maker: 'unknown' }), before], before);
    const body = settledBody(rows, chosenBeforehand(rows));
    expect(body).toEqual({ title: 'Heron', maker: 'unknown' });
    expect(body && 'date' in body).toBe(false);
  });

  it('does not take the order of keys inside a value for a change', () => {
    const a = entry('f', { coverage: { value: 0.1, low: 0.07 } });
    const b = entry('g', { coverage: { low: 0.07, value: 0.1 } });
    expect(sideBySide([a, b], undefined)[0]?.changedBy).toBe('same');
  });

  it('leaves everything that differs to the person where the two were begun apart', () => {
    const rows = sideBySide([entry('h', { severity: 'slight' }), entry('i', { severity: 'severe' })], undefined);
    expect(chosenBeforehand(rows)).toEqual({});
  });

  it('does not choose between three versions when two of them changed a field, even alike', () => {
    const third = entry('j', { ...before.body, title: 'Grey heron' });
    const rows = sideBySide([one, two, third], before);
    expect(rows.find(({ field }) => field === 'title')?.changedBy).toBe('several');
  });
});
