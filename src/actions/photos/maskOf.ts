import type { MaskTold } from '../../device/pixels';
import type { Outline, Refused, Rgb } from '../../engine/photo';
import type { BodyOf } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { type Overlaid, overlaid } from './overlaid';
import { askPixels, keptPhotoOf } from './pixelsOf';

/** What tells green from sound surface on one photo: colours tapped, and what a brush put right. */
export interface PhotoTaps {
  readonly green: readonly Rgb[];
  readonly sound: readonly Rgb[];
  readonly brush?: BodyOf<'measure'>['working']['brush'];
}

export interface MaskOf extends PhotoTaps {
  /** The part of the photo that is told. */
  readonly part: Outline;
  /** Lays the check dots. */
  readonly seed: number;
}

/** A mask, its picture as an object URL that lasts while somebody looks. */
export type MaskSeen = Overlaid<MaskTold>;

/**
 * Green and sound told apart pixel by pixel in a part of a photo. The same input gives the same answer; it is worked out when somebody
 * looks, and left off when nobody does any more. Refused where the taps do not tell, or the photo cannot be read.
 */
export const maskOf = (desk: Desk, photo: string, of: MaskOf): Question<MaskSeen | Refused> =>
  overlaid(desk, `mask ${photo} ${JSON.stringify(of)}`, async (signal) => {
    const { part, seed, ...taps } = of;
    return askPixels(desk, { do: 'mask', photo: await keptPhotoOf(desk, photo), part, taps, seed }, signal);
  });
