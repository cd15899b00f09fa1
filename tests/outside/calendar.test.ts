import { expect, test } from 'vitest';
import { drawnFrom } from '../../src/engine/chance';
import { addDays } from '../../src/engine/record';
import { type CalendarDay, calendarFile } from '../../src/engine/watch';
import { askPython } from './python';

/** The package icalendar (Debian python3-icalendar) reads the file and says what each day holds, in hexadecimal so that no letter is lost on the way. */
const program = `
import json, sys
from icalendar import Calendar
calendar = Calendar.from_ical(bytes.fromhex(sys.argv[1]))
assert not calendar.errors, calendar.errors
out = []
for event in calendar.walk("VEVENT"):
    assert not event.errors, event.errors
    alarms = event.walk("VALARM")
    out.append({
        "uid": str(event["UID"]),
        "day": event["DTSTART"].dt.isoformat(),
        "end": event["DTEND"].dt.isoformat(),
        "stamp": event["DTSTAMP"].dt.isoformat(),
        "summary": str(event["SUMMARY"]),
        "description": str(event["DESCRIPTION"]),
        "ring": [alarm["TRIGGER"].dt.days for alarm in alarms],
    })
print(json.dumps(out))
`;

/** This reader takes a backslash before a comma, a semicolon or an n for one sign; ical.js, in the unit tests, reads those as they stand. */
const letters = ['a', 'Q', ' ', ',', ';', 'a\\b', '"', 'ü', 'ß', '–', '静', 'か', '😀', ':', '\n', '.', '²'];

const days = (seed: number): CalendarDay[] => {
  const drawn = drawnFrom(seed);
  const text = (most: number, line: boolean): string => {
    const drew = Array.from({ length: 1 + drawn.below(most) }, () => letters[drawn.below(letters.length)] ?? 'a');
    return `x${line ? drew.join('').replaceAll('\n', ' ') : drew.join('')}x`;
  };
  return Array.from({ length: 25 }, (_, i) => ({
    uid: `look/sculpture/${i}/2026-05-12`,
    day: addDays('2026-10-15', drawn.below(2000)),
    summary: text(120, true),
    description: text(400, false),
  }));
};

test('two hundred days of odd words are read by the Python package icalendar as they were written', () => {
  for (let seed = 1; seed <= 8; seed++) {
    const wrote = days(seed);
    const file = calendarFile(wrote, {
      made: '2026-10-15T10:00:00.000+02:00',
      name: 'Ü, garden',
      of: 'c',
      alarmDays: 7,
    });
    const read: unknown = JSON.parse(askPython(program, Buffer.from(file).toString('hex')));
    expect(read).toEqual(
      wrote.map(({ uid, day, summary, description }) => ({
        uid: `${uid}@c`,
        day,
        end: addDays(day, 1),
        stamp: '2026-10-15T08:00:00+00:00',
        summary,
        description,
        ring: [-7],
      })),
    );
  }
});
