import { expect, test } from 'vitest';
import { calendarFile, escapedText, folded } from '../../src/engine/watch';

// RFC 5545, Internet Calendaring and Scheduling Core Object Specification (2009). Its own examples, from memory.

test('3.3.11: a text of three lines is written on one, with its breaks escaped', () => {
  expect(escapedText('Project XYZ Final Review\nConference Room - 3B\nCome Prepared.')).toBe(
    'Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.',
  );
});

test('3.3.11: backslash, semicolon and comma are escaped, and a colon is not', () => {
  expect(escapedText('a\\b; c, d: e')).toBe('a\\\\b\\; c\\, d: e');
});

test('3.1: a long line is folded by CRLF and one blank, and unfolded it is what it was', () => {
  const line = 'DESCRIPTION:This is a long description that exists on a long line, and goes on past the end of it.';
  const lines = folded(line).split('\r\n');
  expect(lines.length).toBeGreaterThan(1);
  for (const one of lines.slice(1)) expect(one.startsWith(' ')).toBe(true);
  expect(folded(line).replaceAll('\r\n ', '')).toBe(line);
});

test('3.6.1: an event of a whole day ends on the day after, and one of several days after its last', () => {
  const day = { uid: 'u', day: '2026-12-31', summary: 's', description: 'd' };
  const options = { made: '2026-10-15T10:00:00Z', name: 'n', of: 'c' };
  expect(calendarFile([day], options)).toContain('DTSTART;VALUE=DATE:20261231\r\nDTEND;VALUE=DATE:20270101\r\n');
  expect(calendarFile([{ ...day, until: '2027-01-02' }], options)).toContain('DTEND;VALUE=DATE:20270103\r\n');
});

test('3.6: a calendar of no day still has its version and its maker', () => {
  const file = calendarFile([], { made: '2026-10-15T10:00:00Z', name: 'n', of: 'c' });
  expect(file.startsWith('BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:')).toBe(true);
  expect(file.endsWith('END:VCALENDAR\r\n')).toBe(true);
});
