import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { type CalendarDay, calendarFile, folded } from '../../../src/engine/watch';

const options = { made: '2026-10-15T23:30:00.000-02:00', name: 'Saltlamp Walk', of: 'c1', alarmDays: 1 };
const day = (more: Partial<CalendarDay> = {}): CalendarDay => ({
  uid: 'warranty/campaign/c/2026-11-22',
  day: '2026-09-23',
  summary: 'Look before the warranty ends',
  description: 'Foundry team',
  ...more,
});
const read = (file: string) => {
  const calendar = new ICAL.Component(ICAL.parse(file));
  return calendar.getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));
};

describe('the calendar file (RFC 5545)', () => {
  it('is read by an independent reader: day, words, alarm, a name that stays', () => {
    const [event] = read(calendarFile([day()], options));
    expect(event?.uid).toBe('warranty/campaign/c/2026-11-22@c1');
    expect(event?.startDate.toString()).toBe('2026-09-23');
    expect(event?.startDate.isDate).toBe(true);
    expect(event?.endDate.toString()).toBe('2026-09-24');
    expect(event?.summary).toBe('Look before the warranty ends');
    const alarm = event?.component.getFirstSubcomponent('valarm');
    expect(alarm?.getFirstPropertyValue('action')).toBe('DISPLAY');
    expect(String(alarm?.getFirstPropertyValue('trigger'))).toBe('-P1D');
    // Half past eleven at night west of Greenwich is the next day in UTC.
    expect(String(event?.component.getFirstPropertyValue('dtstamp'))).toBe('2026-10-16T01:30:00Z');
  });

  it('gives the same names again however the words and the day changed', () => {
    const uids = (...days: CalendarDay[]) => read(calendarFile(days, options)).map(({ uid }) => uid);
    expect(uids(day())).toEqual(uids(day({ day: '2026-10-01', summary: 'other' })));
  });

  it('ends every line by CRLF and holds it to 75 octets, without cutting a letter in two', () => {
    const summary = 'Prüfung der Oberfläche – 静かな海 😀, '.repeat(12);
    const file = calendarFile([day({ summary, description: summary })], options);
    expect(file.endsWith('\r\n')).toBe(true);
    expect(file.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    for (const line of file.split('\r\n')) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    expect(read(file)[0]?.summary).toBe(summary);
  });

  it('any words come back as they were', () => {
    const words = fc
      .string({ unit: 'grapheme', maxLength: 200 })
      .map((text) => text.replace(/\p{Cc}/gu, ' '))
      .filter((text) => text.trim() !== '');
    fc.assert(
      fc.property(fc.array(words, { minLength: 1, maxLength: 4 }), (lines) => {
        const description = lines.join('\n');
        const [event] = read(calendarFile([day({ summary: lines[0] ?? '', description })], options));
        return event?.description === description && event?.summary === lines[0];
      }),
      { seed: 5545 },
    );
  });

  it('a line that is already short is left alone', () => {
    expect(folded('SUMMARY:Look')).toBe('SUMMARY:Look');
    expect(folded(`X:${'a'.repeat(73)}`)).not.toContain('\r\n');
    expect(folded(`X:${'a'.repeat(74)}`)).toContain('\r\n ');
  });
});
