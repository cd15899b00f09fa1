import { addDays } from '../record';

/** One day of a calendar file. */
export interface CalendarDay {
  /** The same for the same thing in every file: a calendar that reads a newer file mends the day instead of doubling it. */
  readonly uid: string;
  /** YYYY-MM-DD. */
  readonly day: string;
  /** Last day, where it lasts for several. */
  readonly until?: string | undefined;
  readonly summary: string;
  readonly description: string;
  readonly location?: string | undefined;
  readonly category?: string | undefined;
}

export interface CalendarOptions {
  /** When the file was made, ISO 8601 with offset. */
  readonly made: string;
  /** The calendar's own name. */
  readonly name: string;
  /** Names this collection among all: its id. */
  readonly of: string;
  /** An alarm so many days before each day; none where left out. */
  readonly alarmDays?: number | undefined;
}

/** Longest line of a file, octets without its end. RFC 5545, 3.1 (read from memory, held by two readers in the tests). */
const longest = 75;

const octetsOf = (char: string): number => {
  const code = char.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
};

/** Long lines go on after CRLF and one blank, never within a character. */
export const folded = (line: string): string => {
  let out = '';
  let octets = 0;
  for (const char of line) {
    const more = octetsOf(char);
    if (octets + more > longest) {
      out += '\r\n ';
      octets = 1;
    }
    out += char;
    octets += more;
  }
  return out;
};

/** Control characters other than a line break; no reader has to take them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is taken out
const controls = /[\u0000-\u0009\u000b-\u001f\u007f]/g;

/** A value of type TEXT, RFC 5545, 3.3.11: backslash, semicolon, comma and line break are escaped. */
export const escapedText = (text: string): string =>
  text
    .replace(/\r\n?/g, '\n')
    .replace(controls, ' ')
    .replace(/[\\;,]/g, '\\$&')
    .replace(/\n/g, '\\n');

const compact = (day: string): string => day.replaceAll('-', '');

/** An instant with its offset as UTC, YYYYMMDDTHHMMSSZ. */
const utcStamp = (iso: string): string => {
  const told = /^(\d{4}-\d{2}-\d{2})T(\d{2}):(\d{2}):(\d{2})(?:\.\d+)?(Z|([+-])(\d{2}):(\d{2}))$/.exec(iso);
  if (!told) throw new RangeError(`"${iso}" is not an instant with its offset.`);
  const [, day = '', h, m, s, , sign, oh = '0', om = '0'] = told;
  const offset = (sign === '-' ? -1 : 1) * (Number(oh) * 60 + Number(om));
  const minutes = Number(h) * 60 + Number(m) - offset;
  const shift = Math.floor(minutes / 1440);
  const left = minutes - shift * 1440;
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${compact(addDays(day, shift))}T${two(Math.floor(left / 60))}${two(left % 60)}${s}Z`;
};

const event = (one: CalendarDay, { made, of, alarmDays }: CalendarOptions): readonly string[] => {
  const summary = escapedText(one.summary);
  return [
    'BEGIN:VEVENT',
    `UID:${escapedText(`${one.uid}@${of}`)}`,
    `DTSTAMP:${utcStamp(made)}`,
    `DTSTART;VALUE=DATE:${compact(one.day)}`,
    `DTEND;VALUE=DATE:${compact(addDays(one.until && one.until > one.day ? one.until : one.day, 1))}`,
    `SUMMARY:${summary}`,
    `DESCRIPTION:${escapedText(one.description)}`,
    ...(one.location ? [`LOCATION:${escapedText(one.location)}`] : []),
    ...(one.category ? [`CATEGORIES:${escapedText(one.category)}`] : []),
    'TRANSP:TRANSPARENT',
    ...(alarmDays === undefined
      ? []
      : ['BEGIN:VALARM', 'ACTION:DISPLAY', `DESCRIPTION:${summary}`, `TRIGGER:-P${alarmDays}D`, 'END:VALARM']),
    'END:VEVENT',
  ];
};

/**
 * A calendar file by RFC 5545 (iCalendar): whole days, lines ended by CRLF and folded at 75 octets, UIDs that stay. The same days
 * give the same file but for the time it was made.
 */
export const calendarFile = (days: readonly CalendarDay[], options: CalendarOptions): string =>
  [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Patina Round//What is due//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    `X-WR-CALNAME:${escapedText(options.name)}`,
    ...days.flatMap((one) => event(one, options)),
    'END:VCALENDAR',
  ]
    .map((line) => `${folded(line)}\r\n`)
    .join('');
