import fc from 'fast-check';
import { expect, test } from 'vitest';
import { afterTick, beginWatch, type Tick, type WatchCount, watchState } from '../../src/engine/heat';

const minute = 60_000;

/** What can befall a tablet between two ticks. Times in milliseconds. */
type Event =
  | { readonly is: 'ticks'; readonly for: number; readonly every: number }
  | { readonly is: 'sleeps'; readonly for: number; readonly steadyToo: boolean }
  | { readonly is: 'restarts'; readonly away: number }
  | { readonly is: 'clock set'; readonly by: number };

const event: fc.Arbitrary<Event> = fc.oneof(
  fc.record({
    is: fc.constant('ticks' as const),
    for: fc.integer({ min: 1000, max: 40 * minute }),
    every: fc.constantFrom(1000, 5000, 15_000, 60_000),
  }),
  fc.record({
    is: fc.constant('sleeps' as const),
    for: fc.integer({ min: 0, max: 90 * minute }),
    steadyToo: fc.boolean(),
  }),
  fc.record({ is: fc.constant('restarts' as const), away: fc.integer({ min: 0, max: 120 * minute }) }),
  fc.record({ is: fc.constant('clock set' as const), by: fc.integer({ min: -180 * minute, max: 180 * minute }) }),
);

/** Lives through the events. `truth` is what really went by; `awake` of it, in which the app was there and ticking. */
const live = (events: readonly Event[]) => {
  let wall = Date.parse('2026-06-03T16:20:00+01:00');
  let steady = 500;
  let page = 1;
  let truth = 0;
  let awake = 0;
  const tick = (): Tick => ({ wall, steady, page: `page ${page}` });
  let count: WatchCount = beginWatch('2026-06-03T16:20:00+01:00', tick());
  const goes = (ms: number) => {
    wall += ms;
    truth += ms;
  };
  for (const now of events) {
    if (now.is === 'ticks') {
      for (let gone = 0; gone < now.for; gone += now.every) {
        goes(now.every);
        steady += now.every;
        awake += now.every;
        count = afterTick(count, tick());
      }
    } else if (now.is === 'sleeps') {
      goes(now.for);
      if (now.steadyToo) steady += now.for;
      count = afterTick(count, tick());
    } else if (now.is === 'restarts') {
      goes(now.away);
      page += 1;
      steady = 300;
      count = afterTick(count, tick());
    } else {
      wall += now.by;
      count = afterTick(count, tick());
    }
  }
  return { count, truth, awake };
};

const runs = { numRuns: 500 };

test('whatever befalls the tablet, no watch is over before its time has really gone by', () => {
  fc.assert(
    fc.property(fc.array(event, { maxLength: 12 }), fc.integer({ min: 1, max: 240 }), (events, asked) => {
      const { count, truth } = live(events);
      expect(count.counted).toBeLessThanOrEqual(truth);
      if (watchState(count, asked).state === 'over') expect(truth).toBeGreaterThanOrEqual(asked * minute);
    }),
    runs,
  );
});

test('what was counted is not lost by a restart, a sleep or a clock that is set', () => {
  fc.assert(
    fc.property(fc.array(event, { maxLength: 12 }), fc.integer({ min: 1, max: 240 }), (events, asked) => {
      const { count, awake } = live(events);
      expect(count.counted).toBeGreaterThanOrEqual(awake);
      if (awake >= asked * minute) expect(watchState(count, asked).state).toBe('over');
    }),
    runs,
  );
});

test('a tablet that stays awake counts to the minute, and says nothing of gaps', () => {
  const { count } = live([{ is: 'ticks', for: 60 * minute, every: 1000 }]);
  expect(watchState(count, 60)).toEqual({ state: 'over', left: 0, reasons: [] });
  const before = live([{ is: 'ticks', for: 60 * minute - 1000, every: 1000 }]).count;
  expect(watchState(before, 60)).toMatchObject({ state: 'running', left: 1000 });
});

test('a clock set forward an hour ends no watch: it is in doubt, and the count goes on', () => {
  const { count } = live([
    { is: 'ticks', for: 5 * minute, every: 1000 },
    { is: 'clock set', by: 60 * minute },
  ]);
  const state = watchState(count, 60);
  expect(state).toMatchObject({ state: 'in doubt', left: 55 * minute });
  expect(state.reasons).toEqual([{ code: 'heat: not counted', params: { minutes: 60 } }]);
});

test('a clock set back is said, and makes the watch no longer than its time', () => {
  const { count } = live([
    { is: 'ticks', for: 30 * minute, every: 1000 },
    { is: 'clock set', by: -60 * minute },
    { is: 'ticks', for: 30 * minute, every: 1000 },
  ]);
  expect(watchState(count, 60)).toEqual({
    state: 'over',
    left: 0,
    reasons: [{ code: 'heat: clock went back', params: { minutes: 60 } }],
  });
});

test('a short restart costs the time it took and no more', () => {
  const { count } = live([
    { is: 'ticks', for: 40 * minute, every: 1000 },
    { is: 'restarts', away: 20_000 },
    { is: 'ticks', for: 20 * minute, every: 1000 },
  ]);
  expect(watchState(count, 60).state).toBe('over');
});

test('a page that was open for hours before lends the watch none of its time', () => {
  const wall = Date.parse('2026-06-03T16:20:00+01:00');
  const begun = beginWatch('2026-06-03T16:20:00+01:00', { wall, steady: 500, page: 'one' });
  const count = afterTick(begun, { wall: wall + 1000, steady: 5 * 60 * minute, page: 'open since noon' });
  expect(count.counted).toBe(0);
  expect(watchState(count, 60).state).toBe('running');
});

test('a clock set back in the middle of a watch leaves it in doubt: the watcher need not wait that hour twice', () => {
  const { count } = live([
    { is: 'ticks', for: 30 * minute, every: 1000 },
    { is: 'restarts', away: 30 * minute },
    { is: 'clock set', by: -60 * minute },
  ]);
  expect(watchState(count, 60)).toMatchObject({ state: 'in doubt', left: 30 * minute });
});
