import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import type { BagStep } from './asked';
import { checkedBag } from './checkedBag';

/** Reads a bag just written as one that comes from elsewhere is read, and rejects where it is not whole, or does not hold as many photos. */
export const readBack = async (
  file: File,
  photos: number,
  way: { heard(step: BagStep): void; readonly signal: AbortSignal },
): Promise<void> => {
  const read = await checkedBag(file, {
    heard: ({ done, all }) => way.heard({ stage: 'reading back', done, all }),
    signal: way.signal,
  });
  const path = read.ok ? file.name : String(read.reasons[0]?.params.path ?? file.name);
  if (!read.ok || read.photos.length !== photos) throw new StoreProblem(deviceReason('bag not whole', { path }));
};
