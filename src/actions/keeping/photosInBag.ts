import { checkedBeside } from '../../device/bag';
import type { Outcome } from '../desk';
import { attempt, refuse } from '../outcome';
import { refusal } from '../reasonCodes';
import type { BagSeen } from './freePhotos';
import type { Checking } from './lookThrough';

/** Reads a bag through, every byte of it, and says which photos it holds; refused where one hash in it is wrong. Stores nothing. */
export const photosInBag = (
  file: Blob & { readonly name?: string },
  { heard, signal }: Checking = {},
): Promise<Outcome<{ readonly bag: BagSeen }>> =>
  attempt(async () => {
    const bag = await checkedBeside(file, {
      heard: ({ done, all }) => heard?.(done, all),
      ...(signal ? { signal } : {}),
    });
    if (!bag) return refuse(refusal('checking left off', {}));
    if (!bag.ok) return refuse(bag.reasons[0] ?? refusal('file has problems', { count: bag.reasons.length }));
    const photos = bag.photos.map(({ sha256 }) => sha256);
    return { bag: { name: file.name ?? '', day: bag.info.day ?? '', photos } };
  });
