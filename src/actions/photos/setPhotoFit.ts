import type { Pair, PhotoFitKind } from '../../engine/photo';
import { nameOf } from '../../engine/record';
import { type Change, commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { theThing } from '../theThing';
import { asThingOfKind } from './asThingOfKind';
import { sizeOf } from './sidesOf';

export interface PhotosLaid {
  readonly photo: string;
  readonly onto: string;
  readonly kind: PhotoFitKind;
  /** All of them, in the order they were touched; none takes the fit away. */
  readonly pairs: readonly Pair[];
}

/**
 * The pairs of places by which one photo lies on another, said anew with every pair that is touched, so that none is lost. Pairs the
 * other way round of the same two photos go: two photos have one fit. Refused between works, and where the size of a photo is not known.
 */
export const setPhotoFit = (desk: Desk, { photo, onto, kind, pairs }: PhotosLaid): Promise<Outcome> =>
  attempt(async () => {
    if (photo === onto) refuse(refusal('photo laid on itself', {}));
    if (pairs.length === 0) return must(await removePhotoFit(desk, photo, onto));
    const [one, other] = [await theThing(desk, 'photo', photo), await theThing(desk, 'photo', onto)];
    const { sculpture } = one.body;
    if (other.body.sculpture !== sculpture) refuse(refusal('not here', { thing: onto }));
    const size = sizeOf(one) ?? refuse(refusal('photo size not known', {}));
    const ontoSize = sizeOf(other) ?? refuse(refusal('photo size not known', {}));
    const sizes = { size: { ...size }, ontoSize: { ...ontoSize } };
    const body = { sculpture, photo, onto, kind, ...sizes, pairs: pairs.map((pair) => asKept(pair)) };
    const changes: Change[] = [
      { thing: nameOf.photoFit(photo, onto), kind: 'photoFit', within: sculpture, body },
      ...(await turned(desk, photo, onto)),
    ];
    return must(await commitChanges(desk, deedName('deed: pairs of photos set', { pairs: pairs.length }), changes));
  });

const asKept = ({ from, onto }: Pair): { from: [number, number]; onto: [number, number] } => ({
  from: [from[0], from[1]],
  onto: [onto[0], onto[1]],
});

const turned = async (desk: Desk, photo: string, onto: string): Promise<Change[]> => {
  const thing = nameOf.photoFit(onto, photo);
  return (await asThingOfKind(desk, 'photoFit', thing)) ? [{ thing, gone: true }] : [];
};

/** Takes away the pairs of two photos, whichever way round they were touched. */
export const removePhotoFit = (desk: Desk, photo: string, onto: string): Promise<Outcome> =>
  attempt(async () => {
    const gone = [...(await turned(desk, photo, onto)), ...(await turned(desk, onto, photo))];
    if (gone.length === 0) refuse(refusal('nothing changed', {}));
    return must(await commitChanges(desk, deedName('deed: pairs of photos removed', {}), gone));
  });
