import { type BodyOf, idPart } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';

/** What a bag of a choice of works would come to, before it is made. */
export interface BagSize {
  /** Photos whose bytes are here and would go into it. */
  readonly photos: number;
  readonly photoBytes: number;
  /** Photos spoken of whose bytes are not here. */
  readonly missing: number;
}

/** By works (thing names); the whole collection when left out. */
export const bagSize = (desk: Desk, sculptures?: readonly string[]): Question<BagSize> =>
  ask(
    desk,
    `bag size ${sculptures?.join(' ') ?? ''}`,
    () => desk.store.changes(),
    async () => {
      const [photos, names] = await Promise.all([desk.store.ofKind('photo'), desk.store.photosHere()]);
      const chosen = sculptures && new Set(sculptures);
      const here = new Set(names);
      const spoken = photos.filter(({ within }) => !chosen || chosen.has(within));
      const going = spoken.filter(({ thing }) => here.has(idPart(thing)));
      return {
        photos: going.length,
        photoBytes: going.reduce((sum, { lead }) => sum + (lead.body as BodyOf<'photo'>).bytes, 0),
        missing: spoken.length - going.length,
      };
    },
  );
