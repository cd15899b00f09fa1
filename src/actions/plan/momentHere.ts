import { steadyTick } from '../../device/steady';
import type { Tick } from '../../engine/heat';
import type { Desk } from '../desk';

/** This moment on the calendar of this desk: in the invented garden it is always the same day, at the time it is here. */
export const momentHere = (desk: Desk): string => `${desk.today()}${desk.now().slice(10)}`;

/** Both clocks at this moment, the one on the wall by that calendar. */
export const tickHere = (desk: Desk): Tick => {
  const tick = steadyTick();
  return desk.invented ? { ...tick, wall: Date.parse(momentHere(desk)) } : tick;
};
