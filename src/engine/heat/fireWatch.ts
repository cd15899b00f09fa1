import type { Reason } from '../record';
import { because } from './reasonCodes';

/**
 * Two clocks at one moment, milliseconds. `wall` can be set forward or back by hand or by the network. `steady` only ever
 * counts on, never faster than time, may stand still while the tablet sleeps, and starts anew with each opening of the
 * app: `page` says which opening.
 */
export interface Tick {
  readonly wall: number;
  readonly steady: number;
  readonly page: string;
}

/** How far a watch is. Kept on this device after each tick, so that it goes on after a restart. */
export interface WatchCount {
  /** The end of the work it counts from, as the record says it; another end is another watch. */
  readonly since: string;
  /** Milliseconds that certainly went by: never more than really did. */
  readonly counted: number;
  /** Milliseconds in which the tablet slept or the app was shut, by the clock on the wall, and so not counted. */
  readonly notCounted: number;
  /** Milliseconds the clock on the wall was seen to go back. */
  readonly wentBack: number;
  readonly last: Tick;
}

/** Two clocks of one machine may drift apart so far between two ticks before something has happened. Milliseconds. */
const drift = 2000;

export const beginWatch = (since: string, tick: Tick): WatchCount => ({
  since,
  counted: 0,
  notCounted: 0,
  wentBack: 0,
  last: tick,
});

/**
 * One tick more. Only steady time within one opening counts; what the wall clock says beyond it may be sleep or may be a
 * clock set forward, which nobody can tell apart from here, and counts for nothing.
 */
export const afterTick = (count: WatchCount, tick: Tick): WatchCount => {
  const { last } = count;
  const steady = tick.page === last.page ? Math.max(0, tick.steady - last.steady) : 0;
  const apart = tick.wall - last.wall - steady;
  return {
    ...count,
    counted: count.counted + steady,
    notCounted: count.notCounted + (apart > drift ? apart : 0),
    wentBack: count.wentBack + (apart < -drift ? -apart : 0),
    last: tick,
  };
};

export interface WatchState {
  /** Over: the whole time was counted. In doubt: the clock says it is over, or went back, and the count does not bear it out. */
  readonly state: 'running' | 'over' | 'in doubt';
  /** Milliseconds still to be counted; 0 when over. */
  readonly left: number;
  readonly reasons: readonly Reason[];
}

const minute = 60_000;

/** Where the watch stands: `asked` minutes, from `since` to the last tick. */
export const watchState = (count: WatchCount, asked: number): WatchState => {
  const left = Math.max(0, asked * minute - count.counted);
  const byClock = count.last.wall - Date.parse(count.since);
  const reasons: Reason[] = [];
  if (count.wentBack > 0)
    reasons.push(because('heat: clock went back', { minutes: Math.max(1, Math.round(count.wentBack / minute)) }));
  const missing = Math.round(count.notCounted / minute);
  if (missing > 0) reasons.push(because('heat: not counted', { minutes: missing }));
  if (left === 0) return { state: 'over', left, reasons };
  return { state: byClock >= asked * minute || count.wentBack > 0 ? 'in doubt' : 'running', left, reasons };
};

/** A watch by the watcher's own watch. */
export interface OwnWatch {
  readonly from: string;
  readonly until: string;
}

/** Minutes from one time of the day to another, over midnight too. */
export const minutesOfOwn = ({ from, until }: OwnWatch): number => {
  const minutes = (time: string) => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
  return (minutes(until) - minutes(from) + 1440) % 1440;
};

/** Times from which more than half a day follows where less was asked for are two times in the wrong order. */
const halfDay = 720;

/** What stands against a watch by the watcher's own watch: turned round, or begun before the flame was out (`workEnded`, an instant). */
export const ownWatchRefused = (own: OwnWatch, workEnded: string, asked: number): Reason | undefined => {
  const { from, until } = own;
  if (from === until) return because('heat: a watch of no time');
  if (asked <= halfDay && minutesOfOwn(own) > halfDay)
    return because('heat: own watch turned round', { since: from, until });
  const ended = workEnded.slice(11, 16);
  // From the end to the beginning of the watch by the shorter way round the clock: a watch over midnight begins after it too.
  const early = minutesOfOwn({ from, until: ended });
  return early > 1 && early < halfDay ? because('heat: own watch before the end', { since: from, ended }) : undefined;
};
