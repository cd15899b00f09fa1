import {
  afterTick,
  beginWatch,
  heatReason,
  minutesOfOwn,
  type OwnWatch,
  ownWatchRefused,
  type Tick,
  type WatchCount,
  watchState,
} from '../../engine/heat';
import type { BodyOf } from '../../engine/record';
import type { Desk, Outcome } from '../desk';
import { inTurn } from '../inTurn';
import { attempt, must, refuse } from '../outcome';
import { theThing } from '../theThing';
import { momentHere, tickHere } from './momentHere';
import { editPlanned } from './planned';

const countKey = (hotDay: string): string => `fire watch ${hotDay}`;

const openDay = async (desk: Desk, hotDay: string): Promise<BodyOf<'hotDay'>> => {
  const { body } = await theThing(desk, 'hotDay', hotDay);
  return body.closed ? refuse(heatReason('heat: day is closed')) : body;
};

/** The flame is out: the watch counts from now. Said again, it starts over. */
export const endHotWork = (desk: Desk, hotDay: string, tick: Tick = tickHere(desk)): Promise<Outcome> =>
  attempt(async () => {
    await openDay(desk, hotDay);
    const workEnded = momentHere(desk);
    const done = must(await editPlanned(desk, 'hotDay', hotDay, { workEnded, watchKept: undefined }));
    // Not counted from the first second on, it is counted from the next: the watch is longer by that, and never shorter.
    await countWatch(desk, hotDay, workEnded, tick).catch(() => undefined);
    return done;
  });

/** The work goes on after all: there is no end and no watch any more, and inserts are photographed anew after it. */
export const goOnWithHotWork = (desk: Desk, hotDay: string): Promise<Outcome> =>
  attempt(async () => {
    await openDay(desk, hotDay);
    const wentOn = momentHere(desk);
    return must(await editPlanned(desk, 'hotDay', hotDay, { workEnded: undefined, watchKept: undefined, wentOn }));
  });

/** Notes one more tick of the watch that began with this end of the work; on this device only. */
export const countWatch = (
  desk: Desk,
  hotDay: string,
  workEnded: string,
  tick: Tick = tickHere(desk),
): Promise<WatchCount> =>
  inTurn(desk.store, async () => {
    const before = await desk.store.meta<WatchCount>(countKey(hotDay));
    const count = before?.since === workEnded ? afterTick(before, tick) : beginWatch(workEnded, tick);
    await desk.store.setMeta(countKey(hotDay), count);
    return count;
  });

export interface WatchWord {
  /** The watcher, by role or name. */
  readonly by: string;
  readonly seen?: string | undefined;
  /** By a watch of their own, where the tablet lost count. */
  readonly own?: OwnWatch | undefined;
}

/**
 * The watcher's word that the watch was kept to its end. Refused while the time is not counted, unless their own watch
 * bears it out; and refused against the clock of this tablet where nothing speaks against that clock.
 */
export const sayWatchKept = (
  desk: Desk,
  hotDay: string,
  { by, seen, own }: WatchWord,
  tick: Tick = tickHere(desk),
): Promise<Outcome> =>
  attempt(async () => {
    const { workEnded, watchMinutes } = await openDay(desk, hotDay);
    if (!workEnded) return refuse(heatReason('heat: work not ended'));
    const count = await countWatch(desk, hotDay, workEnded, tick);
    const { state, left } = watchState(count, watchMinutes);
    const stillToCount = heatReason('heat: watch running', { minutes: Math.ceil(left / 60_000) });
    if (state === 'running' || (state === 'in doubt' && !own)) return refuse(stillToCount);
    const counted = Math.floor(count.counted / 60_000);
    const wrong = own && ownWatchRefused(own, workEnded, watchMinutes);
    if (wrong) return refuse(wrong);
    if (state !== 'over' && own && minutesOfOwn(own) < watchMinutes)
      return refuse(heatReason('heat: watch too short', { kept: minutesOfOwn(own), asked: watchMinutes }));
    const watchKept = {
      at: momentHere(desk),
      by: by.trim(),
      counted,
      ...(seen ? { seen } : {}),
      ...(own ? { own: { ...own } } : {}),
    };
    return must(await editPlanned(desk, 'hotDay', hotDay, { watchKept }));
  });

/** Closes the day; refused with the first thing that stands against it (see `againstClosing`). */
export const closeHotDay = (desk: Desk, hotDay: string, by: string): Promise<Outcome> =>
  attempt(async () => {
    await openDay(desk, hotDay);
    if (by.trim() === '') refuse(heatReason('heat: signed by nobody'));
    return must(await editPlanned(desk, 'hotDay', hotDay, { closed: { at: momentHere(desk), by: by.trim() } }));
  });

/** Opens a closed day again: something was forgotten. Its watch stands. */
export const openHotDayAgain = (desk: Desk, hotDay: string): Promise<Outcome> =>
  editPlanned(desk, 'hotDay', hotDay, { closed: undefined });
