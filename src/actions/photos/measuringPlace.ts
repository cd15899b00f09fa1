import type { Outline, Ring } from '../../engine/photo';
import type { Desk, Outcome } from '../desk';
import { inTurn } from '../inTurn';
import { attempt } from '../outcome';
import { keepNote, type WayOfMeasuring } from './measureAtHand';

/** Where the measuring of a zone on a photo stands on this device, so that it opens where it stopped. */
export interface MeasuringPlace {
  /** Code of trade/kinds that is measured. */
  readonly kind?: string;
  /** The tool that is open: one of the ways, or the drawing of the part. */
  readonly open?: WayOfMeasuring | 'part';
  /** The part of the photo as it was drawn here; missing where it was not. */
  readonly drawn?: { readonly rings: Outline; readonly corners: Ring };
}

const keyOf = (photo: string, about: string): string => `measuring place ${photo} ${about}`;

export const measuringPlace = async (desk: Desk, photo: string, about: string): Promise<MeasuringPlace> =>
  (await desk.store.meta<MeasuringPlace>(keyOf(photo, about))) ?? {};

/** Some of it said anew; `undefined` empties a field. */
export type PlacePatch = { readonly [K in keyof MeasuringPlace]: MeasuringPlace[K] | undefined };

/** Says some of it anew; `patch` may be made from what stands, of which a screen may not know yet. */
export const setMeasuringPlace = (
  desk: Desk,
  photo: string,
  about: string,
  patch: PlacePatch | ((before: MeasuringPlace) => PlacePatch),
): Promise<Outcome> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      const before = await measuringPlace(desk, photo, about);
      const said = typeof patch === 'function' ? patch(before) : patch;
      await keepNote(desk, 'place', keyOf(photo, about), { ...before, ...said });
      return {};
    }),
  );
