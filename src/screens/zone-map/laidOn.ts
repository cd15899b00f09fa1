import type { OtherPhoto, SideOnMap, ZoneMap } from '../../actions';
import { fitBetween, type Point, type Size } from '../../engine/photo';
import { sizeUnknown } from './sizeUnknown';

/** How the outlines of a side lie on the photo that is shown. */
export interface Laid {
  readonly size: Size;
  /** From the picture of the side to this photo; null where the outlines cannot be laid on it. */
  readonly through: ((place: Point) => Point) | null;
  /** 'own': it is the picture they are drawn on. The last two bear no outlines: no pairs that stand, or pairs that do not agree. */
  readonly how: 'own' | 'laid' | 'roughly' | 'not fitted' | 'not the same station';
  /** How far off they lie, share of the width; 0 on the own picture. */
  readonly off: number;
}

/** Carries the outlines over to another photo by the places tapped on both; leaves it bare where those do not tell. */
export const laidOn = (side: SideOnMap, other: OtherPhoto | undefined, fits: ZoneMap['fits']): Laid => {
  if (!other) return { size: side.size ?? sizeUnknown, through: (place) => place, how: 'own', off: 0 };
  const { width, height } = other.photo.body;
  const size = width && height ? { width, height } : sizeUnknown;
  const fit = fitBetween(fits, side.elevation.body.photo, other.photo.thing);
  if (!fit) return { size, through: null, how: 'not fitted', off: 0 };
  const off = fit.residual.share;
  if (fit.verdict === 'not the same station') return { size, through: null, how: fit.verdict, off };
  return { size, through: fit.through, how: fit.verdict === 'same' ? 'laid' : 'roughly', off };
};
