import { expect, test } from 'vitest';
import { alarmAt, endOfWork, type HeatReading, minuteOf, temperatureLog } from '../../../src/engine/heat';

const at = (time: string, celsius: number, spot = 'rim'): HeatReading => ({ time, celsius, spot });
const limits = { most: 60, mostDifference: 40 };
const codes = (log: { readonly reasons: readonly { readonly code: string }[] }) => log.reasons.map(({ code }) => code);

/** The day of the invented work: twelve readings at one lens. */
const lens = [19, 22, 27, 31, 36, 41, 47, 44, 40, 35, 29, 24].map((celsius, i) =>
  at(`${i < 7 ? '10' : '11'}:${String((5 + i * 8) % 60).padStart(2, '0')}`, celsius),
);

test('a day that stayed 13 degrees under its limit raises no alarm, and says that the far side was not measured', () => {
  const log = temperatureLog(lens, limits, minuteOf('11:40'));
  expect(log.highest?.celsius).toBe(47);
  expect(log.level).toBe('under');
  expect(codes(log)).toEqual(['heat: one side only']);
});

test('ten degrees under the limit the alarm is raised, at the limit it is over', () => {
  expect(alarmAt(60)).toBe(50);
  const levels = (celsius: number) => temperatureLog([at('10:00', celsius)], { most: 60 }).level;
  expect([levels(49.9), levels(50), levels(59.9), levels(60)]).toEqual(['under', 'near', 'near', 'over']);
});

test('of a small limit the alarm is a quarter under it, or every reading would be one', () => {
  expect(alarmAt(8)).toBe(6);
});

test('how fast it rises is counted between readings of one spot, in whatever order they were written down', () => {
  const log = temperatureLog([at('10:10', 40), at('10:05', 21, 'back'), at('10:00', 20)], { mostPerMinute: 2 });
  expect(log.rows.map(({ perMinute }) => perMinute)).toEqual([undefined, undefined, 2]);
  expect(log.level).toBe('over');
  expect(codes(log)).toContain('heat: rises fast');
});

test('two sides far apart are told though neither is hot', () => {
  const log = temperatureLog([at('10:00', 5, 'far side'), at('10:01', 46)], limits);
  expect(log.rows[1]?.apart).toBe(41);
  expect(log.level).toBe('over');
  expect(log.reasons[0]).toEqual({ code: 'heat: sides apart', params: { time: '10:01', kelvin: 41, limit: 40 } });
});

test('a side read long ago is not set against one read now', () => {
  const log = temperatureLog([at('10:00', 5, 'far side'), at('10:30', 46)], limits);
  expect(log.rows[1]?.apart).toBeUndefined();
});

test('a log with a gap says so, how long, and how hot it could have been at the fastest rise of the day', () => {
  const log = temperatureLog([at('10:00', 20), at('10:05', 30), at('10:40', 31)], limits);
  expect(log.reasons.filter(({ code }) => code === 'heat: gap in the log')).toEqual([
    {
      code: 'heat: gap in the log',
      params: { spot: 'rim', since: '10:05', until: '10:40', minutes: 35, could: 100 },
    },
  ]);
});

test('a single reading, or a log in which it only cooled, says nothing of how hot it came in a gap', () => {
  const told = (...readings: HeatReading[]) =>
    temperatureLog(readings, limits, minuteOf('16:20')).reasons.filter(({ code }) => code === 'heat: gap in the log');
  expect(told(at('10:05', 19)).map(({ params }) => params.could)).toEqual(['']);
  expect(told(at('10:05', 30), at('10:10', 25)).map(({ params }) => params.could)).toEqual(['']);
});

test('one spot read often does not hide that another was left alone', () => {
  const rim = ['10:00', '10:08', '10:16', '10:24'].map((time) => at(time, 20));
  const log = temperatureLog([...rim, at('10:00', 20, 'back'), at('10:24', 20, 'back')], limits);
  expect(log.reasons.find(({ code }) => code === 'heat: gap in the log')?.params.spot).toBe('back');
});

test('a log that stops before the work does has a gap at its end', () => {
  expect(codes(temperatureLog(lens, limits, minuteOf('12:30')))).toContain('heat: gap in the log');
});

test('an insert without a limit is said to have none, and no reading of it is called under', () => {
  const log = temperatureLog([at('10:00', 300)]);
  expect(log.level).toBe('no limit');
  expect(codes(log)).toEqual(['heat: no limit set']);
});

test('no reading at all is said', () => {
  expect(codes(temperatureLog([], limits))).toEqual(['heat: no reading']);
});

test('two values of one spot at one minute are told, not averaged', () => {
  const log = temperatureLog([at('10:00', 20), at('10:00', 50)], limits);
  expect(codes(log)).toContain('heat: two values at once');
  expect(log.highest?.celsius).toBe(50);
});

const night = [at('23:40', 20), at('23:48', 28), at('23:56', 36), at('00:04', 50), at('00:10', 56)];
const evening = { date: '2026-06-03', workEnded: '2026-06-04T00:15:00.000+01:00' };

test('work that goes on past midnight keeps its order, its rise and its end: no reading is taken for one of the morning before', () => {
  const log = temperatureLog(night, { most: 60, mostPerMinute: 2 }, endOfWork(evening));
  expect(log.rows.map(({ time }) => time)).toEqual(['23:40', '23:48', '23:56', '00:04', '00:10']);
  expect(log.rows.map(({ perMinute }) => perMinute)).toEqual([undefined, 1, 1, 1.75, 1]);
  expect(log.rows.map(({ minute }) => minute)).toEqual([1420, 1428, 1436, 1444, 1450]);
  expect(codes(log)).toEqual(['heat: near the limit', 'heat: rises fast']);
});

test('a log that stops before midnight has a gap up to the end of the work after it', () => {
  const log = temperatureLog(night.slice(0, 3), { most: 60 }, endOfWork(evening));
  expect(log.reasons).toEqual([
    { code: 'heat: gap in the log', params: { spot: 'rim', since: '23:56', until: '00:15', minutes: 19, could: 55 } },
  ]);
});

test('a long pause in the day turns nothing round: the morning stays before the evening', () => {
  const log = temperatureLog([at('05:30', 20), at('20:00', 30), at('07:00', 25)], { most: 60 });
  expect(log.rows.map(({ time }) => time)).toEqual(['05:30', '07:00', '20:00']);
});

test('the end of the work is counted from the day of the card, whatever the zone of the clock', () => {
  expect(endOfWork({ date: '2026-06-03', workEnded: '2026-06-03T16:20:00.000+01:00' })).toBe(16 * 60 + 20);
  expect(endOfWork(evening)).toBe(1455);
  expect(endOfWork({ date: '2026-06-03', workEnded: undefined })).toBeUndefined();
});
