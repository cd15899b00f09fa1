import type { BagWay } from './asked';
import { bagBeside } from './beside';
import type { BagFaulty, BagWhole } from './checkedBag';
import { LeftOff } from './leftOff';

/**
 * Checks every byte of a bag beside the page; where this browser has no workers, here. Undefined where it was left off. Rejects with a
 * StoreProblem where it cannot be done.
 */
export const checkedBeside = async (file: Blob, way: BagWay = {}): Promise<BagWhole | BagFaulty | undefined> => {
  if (typeof Worker === 'function') return bagBeside('check', { file }, way);
  const { checkedBag } = await import('./checkedBag');
  try {
    return await checkedBag(file, way);
  } catch (error) {
    if (error instanceof LeftOff) return undefined;
    throw error;
  }
};
