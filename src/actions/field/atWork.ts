import { deviceBox } from '../../device/box';
import { steadyTick } from '../../device/steady';

/** The box outlives the page: the tablet may have been switched off over lunch. */
const key = 'patina-round.last touch';

/** After so long somebody else may hold the tablet, milliseconds. Half an hour by the design of the field. */
export const askAgainAfter = 30 * 60_000;

/** Written no more often than it can matter, milliseconds. */
const often = 60_000;

let written = 0;

const lastTouch = (): number | undefined => {
  const kept = deviceBox.read(key);
  return typeof kept === 'number' ? kept : undefined;
};

/** Somebody touched the tablet. */
export const touchedNow = (): void => {
  const { wall } = steadyTick();
  if (Math.abs(wall - written) < often && lastTouch() === written) return;
  written = wall;
  deviceBox.write(key, wall);
};

/** Nobody touched it for so long that who is at work is asked again. A tablet that was never touched is no tablet left alone. */
export const wasAway = (): boolean => {
  const last = lastTouch();
  return last !== undefined && steadyTick().wall - last >= askAgainAfter;
};
