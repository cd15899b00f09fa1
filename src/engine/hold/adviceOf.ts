import { addDays, type Reason, type SculptureRecord } from '../record';
import type { Advice } from './advice';
import { type Expectation, expectationOf } from './expectation';
import type { CoatingOn, DayFigure, ZoneHolds } from './hold';
import { monthsBetween } from './holdFrom';
import type { Life } from './life';
import { nearestWalk, reachedIn, tellingMost, type WalkDay, walkDayOf } from './nextLook';
import { holdNumbers, rulesOf, severeExposures } from './numbers';
import { because } from './reasonCodes';

/** A day so many months after another; no further than year 9999. */
const after = (day: string, months: number): string =>
  addDays(day, Math.round(Math.min(months, 12_000) * holdNumbers.daysInMonth.value));

const earlier = (a: string, b: string): string => (a < b ? a : b);

interface Around {
  readonly expected: Expectation;
  readonly on: CoatingOn | null;
  readonly chance: number;
  readonly severe: boolean;
  readonly today: string;
}

type Wax = Pick<Advice, 'waxAgainBy' | 'asksConservator'> & { readonly reasons: readonly Reason[] };

/** How long the coating that is on now was seen to last already, months. */
const clearSoFar = ({ to, lastClear }: CoatingOn): number =>
  lastClear === null ? 0 : Math.max(0, monthsBetween(to, lastClear));

const capped = (on: CoatingOn, severe: boolean): { readonly day: string; readonly reason: Reason } => {
  const months = (severe ? holdNumbers.severeCap : holdNumbers.cap).value;
  return {
    day: after(on.from, months),
    reason: severe ? because('hold: severe exposure', { months }) : because('hold: capped', { months }),
  };
};

/** No figure goes with it: a shape that is borrowed tells that it is short, and hardly how short. */
const doesNotHold = (...before: Reason[]): Wax => ({
  waxAgainBy: null,
  asksConservator: true,
  reasons: [...before, because('hold: does not hold here', { months: holdNumbers.leastHold.value })],
});

/** Where no curve stands the steps still say between what two days the level was reached, if they say anything. */
const somewhereIn = (expected: Expectation, on: CoatingOn, chance: number): Reason[] => {
  const reached = reachedIn(expected.seen, clearSoFar(on), chance);
  if (expected.from === 'nothing' || !reached) return [];
  const params = {
    percent: Math.round(chance * 100),
    first: after(on.from, reached.from),
    last: after(on.to, reached.to),
  };
  return [because('hold: level reached in between', params)];
};

const waxAgain = ({ expected, on, chance, severe }: Around): Wax => {
  const said = (reason: Reason, asksConservator = false): Wax => ({
    waxAgainBy: null,
    asksConservator,
    reasons: [reason],
  });
  const { months } = expected;
  if (!on) return said(because('hold: no coating on now'));
  if (on.state === 'not clean')
    return said(because('hold: green right after the coating', { date: on.firstSeen ?? '' }), true);
  if (on.state === 'back') {
    const back = because('hold: green is back', { date: on.firstSeen ?? '' });
    const usual = months?.(0, chance).value;
    if (usual === undefined || usual >= holdNumbers.leastHold.value) return said(back);
    return doesNotHold(back);
  }
  if (!months) return { waxAgainBy: null, asksConservator: false, reasons: somewhereIn(expected, on, chance) };
  const clear = clearSoFar(on);
  const until = months(clear, chance);
  if (until.value < holdNumbers.leastHold.value) return doesNotHold();
  const cap = capped(on, severe);
  const day = after(on.from, until.value);
  const waxAgainBy: DayFigure = {
    day: earlier(day, cap.day),
    low: until.low === null ? null : earlier(after(on.from, until.low), cap.day),
    high: until.high === null ? cap.day : earlier(after(on.to, until.high), cap.day),
  };
  const from = on.lastClear
    ? because('hold: clear at the last look', { date: on.lastClear })
    : because('hold: from the last coating', { date: on.from });
  const percent = Math.round(chance * 100);
  const reasons = [
    because('hold: chance', { percent }),
    from,
    ...(day > cap.day ? [cap.reason] : []),
    ...until.reasons,
  ];
  return { waxAgainBy, asksConservator: false, reasons };
};

const weekdayReason = ({ known, weekday }: WalkDay): Reason =>
  because(known ? 'hold: walk day' : 'hold: no walk day yet', { weekday });

type Look = Pick<Advice, 'nextLook'> & { readonly reasons: readonly Reason[] };

const lookNext = ({ expected, on, today }: Around, walk: WalkDay | null): Look => {
  const none = (...reasons: Reason[]): Look => ({ nextLook: null, reasons });
  if (!on || !walk) return none();
  if (on.state === 'back' || on.state === 'not clean') return none(because('hold: look after the next coating'));
  if (!expected.seen) return none();
  const clear = clearSoFar(on);
  const telling = tellingMost(expected, clear);
  if (!telling) {
    const never = expected.seen.masses.every(({ right }) => right === Number.POSITIVE_INFINITY);
    const longest = Math.max(0, ...expected.seen.masses.map(({ left }) => left));
    if (never) return none(because('hold: never came back, yearly round will do', { months: longest }));
    return none(because('hold: clear past all that was seen', { months: clear }));
  }
  const wanted = after(on.from, telling.at);
  const soonest = on.lastClear !== null && on.lastClear >= today ? addDays(on.lastClear, 1) : today;
  const day = nearestWalk(wanted, walk, soonest);
  const late = wanted < soonest;
  const range = (months: number | null): string | null => (months === null || late ? null : after(on.from, months));
  const reasons = [
    late
      ? because('hold: sooner is better')
      : because('hold: tells most', { percent: Math.round(telling.chance * 100) }),
    weekdayReason(walk),
  ];
  return { nextLook: { day, low: range(telling.low), high: range(telling.high), reasons }, reasons: [] };
};

/** The look that would tell most after a coating a year on from the last one. */
const ifCoatedAgain = ({ expected, on, today }: Around, walk: WalkDay | null): Advice['ifCoated'] => {
  const telling = on && walk ? tellingMost(expected, 0) : null;
  if (!on || !walk || !telling) return null;
  let day = addDays(on.from, holdNumbers.year.value);
  while (day < today) day = addDays(day, holdNumbers.year.value);
  const range = (months: number | null): string | null => (months === null ? null : after(day, months));
  return {
    on: day,
    day: nearestWalk(after(day, telling.at), walk, day),
    low: range(telling.low),
    high: range(telling.high),
  };
};

/**
 * When to wax each zone again and when to look next, in the order the zones are given; ended zones are left out. `lives` are those of
 * the whole collection; `today` is YYYY-MM-DD.
 */
export const adviceOf = (
  record: SculptureRecord,
  zones: readonly ZoneHolds[],
  lives: readonly Life[],
  today: string,
): Advice[] => {
  const { chance } = rulesOf(record);
  const exposureOf = new Map(record.zones.map(({ thing, body }) => [thing, body.exposure]));
  const ended = new Set(
    record.zones.filter(({ body }) => (body.split?.on ?? body.joined?.on ?? '9999') <= today).map(({ thing }) => thing),
  );
  return zones
    .filter(({ zone }) => !ended.has(zone))
    .map((holds) => {
      const on = holds.onNow;
      const expected = expectationOf(holds, lives);
      const severe = (exposureOf.get(holds.zone) ?? []).some((code) => severeExposures.codes.includes(code));
      const around: Around = { expected, on, chance, severe, today };
      const walk = on ? walkDayOf(record, today, on.from) : null;
      const wax = waxAgain(around);
      const look = lookNext(around, walk);
      const half = expected.months?.(0, 0.5) ?? null;
      const past =
        on !== null &&
        on.state !== 'not clean' &&
        (on.state === 'back' || (half !== null && after(on.to, half.value) < today));
      return {
        zone: holds.zone,
        waxAgainBy: wax.waxAgainBy,
        asksConservator: wax.asksConservator,
        nextLook: look.nextLook,
        ifCoated: ifCoatedAgain(around, walk),
        past,
        expected: half,
        reasons: [...expected.reasons, ...wax.reasons, ...look.reasons],
      };
    });
};
