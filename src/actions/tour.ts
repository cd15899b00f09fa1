import { deviceBox } from '../device/box';
import type { Known } from './desk';

const box = 'patina-round.tour';
const listeners = new Set<() => void>();

/** Where on the tour of the demo this device is: 1 for the first place, 0 where nobody is on it. Kept over a restart. */
export const tourStep: Known<number> = {
  subscribe: (changed) => {
    listeners.add(changed);
    return () => listeners.delete(changed);
  },
  get: () => {
    const kept = deviceBox.read(box);
    return typeof kept === 'number' && Number.isInteger(kept) && kept > 0 ? kept : 0;
  },
};

export const setTourStep = (step: number): void => {
  deviceBox.write(box, step);
  for (const changed of listeners) changed();
};
