import { expect, test } from 'vitest';
import { maybeMeasure, maybeNumber, typedTime } from '../../../src/screens/hot-work/typed';

test.each([
  ['7:05', '07:05'],
  ['0705', '07:05'],
  ['14.30', '14:30'],
  ['14 30', '14:30'],
  ['24:00', undefined],
  ['12:60', undefined],
  ['noon', undefined],
  ['', undefined],
])('%j is read as the time %j', (text, time) => {
  expect(typedTime(text)).toBe(time);
});

test.each([
  ['-3,5', -3.5],
  ['−3.5', -3.5],
  ['182', 182],
  ['--3', undefined],
  ['hot', undefined],
])('%j is read as %j degrees', (text, degrees) => {
  expect(maybeMeasure('temperature', text)).toBe(degrees ?? 'wrong');
});

test('an empty figure is none, and a wrong one is not taken for none', () => {
  expect(maybeNumber(' ')).toBeUndefined();
  expect(maybeNumber('tall')).toBe('wrong');
});
