import { describe, expect, it } from 'vitest';
import { findingsCsv } from '../../../src/engine/exchange';
import { type Entry, nameOf } from '../../../src/engine/record';
import { bodies, first, round, sculpture, uuid, zoneA } from '../../files/entries';
import { smallSurvey } from '../../files/smallSurvey';

const { entries } = smallSurvey();

/** A reader of RFC 4180 written from its grammar, so that the writer is not checked by itself. */
const parsed = (text: string): string[][] => {
  const rows: string[][] = [[]];
  let i = 0;
  while (i < text.length) {
    let cell = '';
    if (text[i] === '"') {
      for (i++; !(text[i] === '"' && text[i + 1] !== '"'); i++) {
        cell += text[i];
        if (text[i] === '"') i++;
      }
      i++;
    } else {
      while (i < text.length && text[i] !== ',' && text[i] !== '\r') cell += text[i++];
    }
    rows.at(-1)?.push(cell);
    if (text[i] === ',') i++;
    else if (text[i] === '\r') {
      i += 2;
      if (i < text.length) rows.push([]);
    }
  }
  return rows;
};
const table = (list: readonly Entry[]) => parsed(new TextDecoder().decode(findingsCsv(list)));
const cellOf = (list: readonly Entry[], column: string) => {
  const [head = [], row = []] = table(list);
  return row[head.indexOf(column)];
};
const noted = (note: string) => [
  ...entries,
  first(200, nameOf.finding(round, zoneA, 'green-spots', 'metal'), 'finding', bodies.finding({ note }), {
    replaces: [uuid(116)],
  }),
];

describe('The table of findings', () => {
  it('has one row for each finding, as it stands now', () => {
    expect(table(entries)).toHaveLength(2);
    expect(cellOf(entries, 'sculpture number')).toBe('Q-01');
    expect(cellOf(entries, 'severity')).toBe('moderate');
    expect(cellOf(entries, 'coverage %')).toBe('5');
    expect(cellOf(entries, 'coverage high %')).toBe('7.5');
    expect(cellOf(entries, 'zone area m2')).toBe('1.2');
    expect(cellOf(entries, 'round date')).toBe('2026-05-12');
    expect(cellOf(entries, 'versions not settled')).toBe('0');
  });

  it('leaves out a finding that was taken away, and says where two versions stand', () => {
    const thing = nameOf.finding(round, zoneA, 'green-spots', 'metal');
    const gone = first(200, thing, 'finding', bodies.finding(), { replaces: [uuid(116)], gone: true });
    expect(table([...entries, gone])).toHaveLength(1);
    const second = first(201, thing, 'finding', bodies.finding(), { replaces: [uuid(115)] });
    expect(cellOf([...entries, second], 'versions not settled')).toBe('2');
  });

  it('says of a carried one that it was not judged again', () => {
    const thing = nameOf.finding(round, zoneA, 'green-spots', 'metal');
    const carried = first(200, thing, 'finding', bodies.finding({ carriedFrom: nameOf.round(uuid(70)) }), {
      replaces: [uuid(116)],
    });
    expect(cellOf([...entries, carried], 'how')).toBe('carried, not judged again');
  });

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', ' =1', '\r\n=1', '＝1+1', '＋1'])(
    'hands no formula to a spreadsheet: %j',
    (note) => expect(cellOf(noted(note), 'note')).toBe(`'${note}`),
  );

  it.each(['a "quoted", word', 'two\r\nlines', 'a;b', 'Grünspan, 雕', 'plain'])('keeps text as it is: %j', (note) =>
    expect(cellOf(noted(note), 'note')).toBe(note),
  );

  it('is UTF-8 with its mark, lines ending as RFC 4180 asks, and each row as long as the head', () => {
    const bytes = findingsCsv(noted('a,b'));
    expect([...bytes.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    expect(text.endsWith('\r\n')).toBe(true);
    expect(new Set(table(noted('a,b')).map((row) => row.length)).size).toBe(1);
  });

  it('of no findings is the head alone', () => {
    expect(table([])).toHaveLength(1);
    expect(table([])[0]?.[0]).toBe('sculpture number');
  });

  it('is in the order of the sculptures’ numbers', () => {
    const other = nameOf.sculpture(uuid(80));
    const within = { within: other };
    const zone = nameOf.zone(uuid(81));
    const walk = nameOf.round(uuid(82));
    const more = [
      first(180, other, 'sculpture', { number: 'A-01', title: 'First' }, within),
      first(181, zone, 'zone', bodies.zone({ sculpture: other }), within),
      first(182, walk, 'round', bodies.round({ sculpture: other }), within),
      first(
        183,
        nameOf.finding(walk, zone, 'green-spots', 'metal'),
        'finding',
        bodies.finding({ sculpture: other, round: walk, zone }),
        within,
      ),
    ];
    const [, ...rows] = table([...entries, ...more]);
    expect(rows.map((row) => row[0])).toEqual(['A-01', 'Q-01']);
    expect(sculpture).not.toBe(other);
  });
});
