import { expect, it } from 'vitest';
import { readTimeOfDay } from '../../../src/engine/numerals';

it.each([
  ['14:30', '14:30'],
  ['1430', '14:30'],
  ['9:05', '09:05'],
  ['9.05 Uhr', '09:05'],
  ['14h30', '14:30'],
  ['8 10', '08:10'],
  ['2:30 pm', '14:30'],
  ['2:30 p.m.', '14:30'],
  ['12:15 AM', '00:15'],
  ['12:15 pm', '12:15'],
  ['24:00', undefined],
  ['9:60', undefined],
  ['13:00 pm', undefined],
  ['0:30 am', undefined],
  ['9', undefined],
  ['', undefined],
])('%j is the time %s', (text, time) => {
  expect(readTimeOfDay(text)).toBe(time);
});
