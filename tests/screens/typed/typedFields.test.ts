import { expect, test } from 'vitest';
import { flat, movedSince, putBack, wordOf } from '../../../src/screens/shell/typedFields';

const start = {
  who: '',
  day: '2026-11-26',
  text: { note: '', rows: [] as unknown[] },
  zones: [] as string[],
  is: undefined,
};

test('what was typed and is put back makes the form it was typed into', () => {
  const now = { ...start, who: 'A', text: { note: 'long', rows: [{ role: 'x', name: undefined }] }, is: 'open' };
  expect(putBack(start, flat(now))).toEqual(now);
  expect(putBack(start, movedSince(flat(start), flat(now)))).toEqual(now);
  expect(movedSince(flat(start), flat(start))).toEqual({});
});

test('a field that was emptied counts as typed, and one of another device stands where it was not touched', () => {
  const was = { text: { note: 'old', by: 'Ann' } };
  const moved = movedSince(flat(was), flat({ text: { note: '', by: 'Ann' } }));
  expect(moved).toEqual({ 'text.note': '' });
  expect(putBack({ text: { note: 'newer', by: 'Bea' } }, moved)).toEqual({ text: { note: '', by: 'Bea' } });
});

test('what an earlier build held under other names or in another shape is left, and breaks nothing', () => {
  expect(putBack(start, { gone: 'x', who: ['a'], 'text.note': 7, 'text.rows': 'none', day: '2026-11-01' })).toEqual({
    ...start,
    day: '2026-11-01',
  });
  expect(putBack({ rows: {} }, { 'rows.a/b.c': { price: '1' } })).toEqual({ rows: { 'a/b.c': { price: '1' } } });
});

test('sets are told apart by what is in them', () => {
  expect(wordOf({ a: new Set(['x']) })).not.toBe(wordOf({ a: new Set(['y']) }));
});
