import type { OtherPhoto, SideOnMap } from '../../actions';
import type { Outline, Size } from '../../engine/photo';
import { sizeUnknown } from './sizeUnknown';

/** The outlines of a side as they lie on the photo that is shown. */
export interface Laid {
  readonly size: Size;
  readonly outlines: readonly { readonly zone: string; readonly outline: Outline }[];
  /** 'own': it is the picture they are drawn on. 'not': nobody tapped pairs, or they do not fit. */
  readonly how: 'own' | 'laid' | 'roughly' | 'not fitted' | 'not the same station';
  /** How far off they lie, share of the width; with 'laid' and 'roughly'. */
  readonly off?: number;
}

export const laidOn = (side: SideOnMap, other: OtherPhoto | undefined): Laid => {
  if (!other) return { size: side.size ?? sizeUnknown, outlines: side.outlines, how: 'own' };
  const { width, height } = other.photo.body;
  const size = width && height ? { width, height } : sizeUnknown;
  return { size, outlines: [], how: 'not fitted' };
};
