import { type Current, idPart } from '../../engine/record';
import type { Desk, Outcome, Question } from '../desk';
import { inTurn } from '../inTurn';
import { attempt, refuse } from '../outcome';
import { ask } from '../questions/question';
import { refusal } from '../reasonCodes';
import { rememberedAnew, rememberedVersion } from '../remembered';

/** A bag the person opened again, every hash in it checked. */
export interface BagSeen {
  readonly name: string;
  /** YYYY-MM-DD, when it was made; '' where it does not say. */
  readonly day: string;
  /** Photos in it, by the hash their bytes were found to have. */
  readonly photos: readonly string[];
}

/** Where the bytes of a photo lie that left this device to free its room. */
export type Away = Pick<BagSeen, 'name' | 'day'>;

const awayKey = (sha256: string): string => `away ${sha256}`;

export interface Freed {
  readonly photos: number;
  readonly bytes: number;
  /** Chosen, and not in that bag: they stayed. */
  readonly stayed: number;
}

/**
 * Takes the bytes of photos off this device, of those only that the bag holds whole. Each goes together with the note where it lies; what is
 * said of it and its thumbnail stay. Left off in the middle, those that went are noted and the rest stay.
 */
export const freePhotos = (
  desk: Desk,
  chosen: readonly string[],
  bag: BagSeen,
  { heard, signal }: { heard?(done: number, all: number): void; readonly signal?: AbortSignal } = {},
): Promise<Outcome<Freed>> =>
  attempt(async () => {
    const held = new Set(bag.photos);
    const here = new Set(await desk.store.photosHere());
    const wanted = chosen.filter((name) => here.has(name));
    if (wanted.length === 0) refuse(refusal('no photos chosen', {}));
    const going = wanted.filter((name) => held.has(name));
    if (going.length === 0) refuse(refusal('bag holds none of them', { name: bag.name }));
    const before = await desk.store.held();
    const value: Away = { name: bag.name, day: bag.day };
    let photos = 0;
    for (const name of going) {
      if (signal?.aborted) break;
      await inTurn(desk.store, () => desk.store.dropPhoto(name, { key: awayKey(name), value }));
      photos++;
      heard?.(photos, going.length);
    }
    const after = await desk.store.held();
    rememberedAnew(desk);
    return { photos, bytes: before.bytes - after.bytes, stayed: wanted.length - photos };
  });

/** Where a photo's bytes are that are not here; null where they are, or where that is not known. */
export const photoAway = (desk: Desk, photo: Current['thing']): Question<Away | null> =>
  ask(
    desk,
    `away ${photo}`,
    () => rememberedVersion(desk),
    async () => (await desk.store.meta<Away>(awayKey(idPart(photo)))) ?? null,
  );
