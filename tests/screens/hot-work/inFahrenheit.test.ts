import { afterEach, expect, it } from 'vitest';
import { sayReason, w } from '../../../src/words';
import { speak } from '../../../src/words/tongue';

afterEach(() => speak({ language: 'en', locale: 'en-GB', units: 'metric' }));

const fast = { code: 'heat: rises fast', params: { time: '10:05', perMinute: 3, limit: 2 } };
const told = () => sayReason(fast).replaceAll('\u00a0', ' ');

it('how fast an insert rises and how fast it may are told in one unit: kelvin are never called degrees Fahrenheit, nor the other way round', () => {
  expect(told()).toContain('3 K a minute; the limit is 2 K');
  expect(w.hotWork.readings.perMinute('3')).toBe('3\u00a0K/min');
  expect(w.insertCare.perMinute).toBe('K a minute');
  speak({ language: 'en', locale: 'en-US', units: 'us' });
  expect(told()).toContain('5.4 °F a minute; the limit is 3.6 °F');
  expect(w.hotWork.readings.perMinute('5.4')).toBe('5.4\u00a0°F/min');
});

it('of a gap before any rise was read nobody is told a temperature it could have come to', () => {
  const params = { spot: 'rim', since: '10:05', until: '16:20', minutes: 375 };
  const gap = (could: number | string) => sayReason({ code: 'heat: gap in the log', params: { ...params, could } });
  expect(gap('')).toContain('How hot it came nobody can say: no rise was read.');
  expect(gap(60)).toContain('it could have come to 60');
});
