import type { ChangeTold } from '../../device/pixels';
import type { Outline, PhotoFit, Refused } from '../../engine/photo';
import type { Desk, Question } from '../desk';
import type { PhotoTaps } from './maskOf';
import { type Overlaid, overlaid } from './overlaid';
import { askPixels, keptPhotoOf } from './pixelsOf';

export interface ChangeMapOf {
  readonly earlier: string;
  readonly later: string;
  /** How the earlier photo lies on the later. */
  readonly fit: Pick<PhotoFit, 'matrix' | 'verdict' | 'reasons'>;
  /** On the later photo. */
  readonly part: Outline;
  /** Of each photo its own: their light differs. */
  readonly samples: { readonly earlier: PhotoTaps; readonly later: PhotoTaps };
  /** How far a spot may be out of place, share of the width of the later photo: what moved by less is no change. */
  readonly edge: number;
}

/** What changed, its picture over the later photo as an object URL that lasts while somebody looks. */
export type ChangeMap = Overlaid<ChangeTold>;

/** What is newly green, no longer, and still, between two photos of one station. Refused where the one does not lie well enough on the other. */
export const changeMapOf = (desk: Desk, of: ChangeMapOf): Question<ChangeMap | Refused> =>
  overlaid(desk, `change ${JSON.stringify(of)}`, async (signal) => {
    const { fit, part, samples, edge } = of;
    if (fit.verdict !== 'same') return { refused: fit.reasons };
    const [earlier, later] = [await keptPhotoOf(desk, of.earlier), await keptPhotoOf(desk, of.later)];
    const taps = { earlierTaps: samples.earlier, laterTaps: samples.later };
    return askPixels(desk, { do: 'change', earlier, later, matrix: fit.matrix, part, ...taps, edge }, signal);
  });
