import { expect, test } from 'vitest';
import { againstClosing, againstStarting, minutesKept, ownWatchRefused } from '../../../src/engine/heat';
import type { BodyOf } from '../../../src/engine/record';
import { hotChecks } from '../../../src/engine/trade';

const who = { role: 'Glass conservator' };
const sculpture = 'sculpture/1';
const hotDay = 'hotDay/1';
const [l2, l5] = ['insert/l2', 'insert/l5'] as const;

const day: BodyOf<'hotDay'> = {
  ...{ sculpture, date: '2026-06-03', permit: 'HW-12', authorisedBy: { role: 'Head of grounds' }, clearZone: 11 },
  ...{ checked: hotChecks.map(({ id }) => id), watcher: { role: 'Helper' }, watchMinutes: 60, inserts: [l2, l5] },
  workEnded: '2026-06-03T15:00:00.000+01:00',
  watchKept: { at: '2026-06-03T16:02:00.000+01:00', by: 'Helper', counted: 60 },
};
const careOf = (insert: string): BodyOf<'insertCare'> => ({
  ...{ sculpture, insert, most: 60, mostDifference: 40, limitBy: who, limitDate: '2026-05-01', method: 'shield' },
});
const afterOf = (insert: string): BodyOf<'insertAfter'> => ({
  ...{ sculpture, insert, hotDay, state: 'unchanged', photos: ['photo/1'], by: 'Helper' },
  at: '2026-06-03T16:10:00.000+01:00',
});
const cares = new Map([l2, l5].map((insert) => [insert, careOf(insert)]));
const afters = new Map([l2, l5].map((insert) => [insert, afterOf(insert)]));
const facts = { day, cares, afters };
const closing = (given: Partial<typeof facts>) => againstClosing({ ...facts, ...given });
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);

test('a day closes once its watch was kept and each insert was seen after the heat', () => {
  expect(closing({})).toEqual([]);
});

test('a day does not close while the work is not said to be over', () => {
  expect(codes(closing({ day: { ...day, workEnded: undefined } }))).toEqual(['heat: work not ended']);
});

test('a day does not close without the word of the watcher', () => {
  expect(closing({ day: { ...day, watchKept: undefined } })).toEqual([
    { code: 'heat: watch not said kept', params: { minutes: 60 } },
  ]);
});

test('a word given too early closes nothing', () => {
  const watchKept = { at: '2026-06-03T15:59:00.000+01:00', by: 'Helper', counted: 59 };
  expect(closing({ day: { ...day, watchKept } })).toEqual([
    { code: 'heat: watch too short', params: { kept: 59, asked: 60 } },
  ]);
});

test('a tablet that lost count yields to the watcher’s own watch, and only for as long as that says', () => {
  const kept = (from: string, until: string) =>
    closing({ day: { ...day, watchKept: { at: day.workEnded!, by: 'Helper', counted: 12, own: { from, until } } } });
  expect(kept('15:00', '16:00')).toEqual([]);
  expect(codes(kept('15:00', '15:40'))).toEqual(['heat: watch too short']);
  expect(kept('23:30', '00:30')).toEqual([]);
});

test('a word without a count is measured between two moments, in whatever zone their clocks were', () => {
  const watchKept = { at: '2026-06-03T18:00:00.000+03:00', by: 'Helper' };
  expect(minutesKept({ workEnded: '2026-06-03T15:00:00.000+01:00', watchKept })).toBe(60);
  expect(minutesKept({ workEnded: '2026-06-03T16:30:00.000+01:00', watchKept })).toBe(0);
});

test('a watch of no minutes is no watch', () => {
  expect(codes(closing({ day: { ...day, watchMinutes: 0 } }))).toEqual(['heat: watch has no length']);
});

test('each insert near the heat needs its photo after it, and a photo list of none is none', () => {
  const one = new Map([
    [l2, afterOf(l2)],
    [l5, { ...afterOf(l5), photos: [] }],
  ]);
  expect(closing({ afters: one })).toEqual([{ code: 'heat: no photo after', params: { insert: l5 } }]);
});

test('an insert that had heat near it without a limit by a named expert keeps the day open', () => {
  const noLimit = new Map([...cares, [l5, { ...careOf(l5), most: undefined }]]);
  const byNobody = new Map([...cares, [l5, { ...careOf(l5), limitBy: undefined }]]);
  expect(codes(closing({ cares: noLimit }))).toEqual(['heat: insert without limit']);
  expect(codes(closing({ cares: byNobody }))).toEqual(['heat: insert without limit']);
  expect(codes(closing({ cares: new Map() }))).toEqual(['heat: insert without limit', 'heat: insert without limit']);
});

test('an insert that was out of the work that day needs no limit; one put back before does', () => {
  const out = { ...careOf(l5), most: undefined, takenOut: '2026-06-01', putBack: '2026-06-20' };
  expect(closing({ cares: new Map([...cares, [l5, out]]) })).toEqual([]);
  const back = { ...out, putBack: '2026-06-03' };
  expect(codes(closing({ cares: new Map([...cares, [l5, back]]) }))).toEqual(['heat: insert without limit']);
});

const starting = (given: Partial<BodyOf<'hotDay'>>, inserts: readonly string[] = [l2, l5]) =>
  codes(againstStarting({ ...facts, day: { ...day, ...given }, inserts }));

test('a card with everything on it has nothing open before the flame is lit', () => {
  expect(starting({})).toEqual([]);
});

test('what is open before the flame is lit is said one by one', () => {
  expect(starting({ permit: ' ' })).toEqual(['heat: no permit']);
  expect(starting({ watcher: undefined })).toEqual(['heat: no watcher']);
  expect(starting({ clearZone: 10 })).toEqual(['heat: clear zone short']);
  expect(starting({ watchMinutes: 20 })).toEqual(['heat: watch short']);
  expect(starting({ checked: [] })).toEqual(['heat: checks open']);
});

test('an insert nobody thought of is named before the flame is lit', () => {
  expect(starting({}, [l2, l5, 'insert/l6'])).toEqual(['heat: insert not on the list']);
});

test('a photo from before the flame was lit again is no photo after the heat', () => {
  const again = { ...day, wentOn: '2026-06-03T16:20:00.000+01:00' };
  expect(codes(closing({ day: again }))).toEqual(['heat: no photo after', 'heat: no photo after']);
  const later = new Map(
    [l2, l5].map((insert) => [insert, { ...afterOf(insert), at: '2026-06-03T15:21:00.000+00:00' }]),
  );
  expect(closing({ day: again, afters: later })).toEqual([]);
});

test('a watch that begins before midnight and ends after it, or begins after an end before midnight, is in order', () => {
  const refused = (from: string, until: string, ended: string) =>
    ownWatchRefused({ from, until }, `2026-06-03T${ended}:00.000+01:00`, 60)?.code;
  expect(refused('23:30', '00:30', '23:30')).toBeUndefined();
  expect(refused('00:10', '01:10', '23:50')).toBeUndefined();
  expect(refused('23:40', '00:50', '23:50')).toBe('heat: own watch before the end');
  expect(refused('10:00', '10:00', '09:50')).toBe('heat: a watch of no time');
});

test('an insert taken off the card after its temperature was read still holds the day open until it is seen', () => {
  const off = { ...day, inserts: [l2] };
  const one = new Map([[l2, afterOf(l2)]]);
  expect(againstClosing({ day: off, cares, afters: one })).toEqual([]);
  expect(codes(againstClosing({ day: off, cares, afters: one, read: [l5, l5, l2] }))).toEqual(['heat: no photo after']);
});
