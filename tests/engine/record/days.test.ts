import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, dayNumber, dayOfNumber, daysBetween, weekdayOf } from '../../../src/engine/record';

describe('calendar days without a clock', () => {
  it('agrees with the calendar of the machine on any day of nine thousand years', () => {
    fc.assert(
      fc.property(fc.integer({ min: -700_000, max: 2_500_000 }), (n) => {
        const date = new Date(n * 86_400_000);
        const text = date.toISOString().slice(0, 10);
        expect(dayOfNumber(n)).toBe(text);
        expect(dayNumber(text)).toBe(n);
        expect(weekdayOf(text)).toBe(date.getUTCDay());
      }),
    );
  });

  it('steps over leap days and the ends of years', () => {
    expect(addDays('2024-02-28', 1)).toBe('2024-02-29');
    expect(addDays('2023-02-28', 1)).toBe('2023-03-01');
    expect(addDays('2026-01-01', -1)).toBe('2025-12-31');
    expect(daysBetween('2023-05-25', '2023-09-14')).toBe(112);
    expect(daysBetween('2023-09-14', '2023-05-25')).toBe(-112);
  });

  it('reads the 31st that stands for the end of any month as that end', () => {
    expect(dayNumber('2024-02-31')).toBe(dayNumber('2024-02-29'));
    expect(addDays('2023-04-31', 0)).toBe('2023-04-30');
  });
});
