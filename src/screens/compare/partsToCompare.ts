import type { PhotoSeriesOfWork } from '../../actions';
import { fitBetween, type Outline, outlineThrough, type PhotoFit } from '../../engine/photo';
import { zoneName } from '../../words';

export interface PartToCompare {
  /** Zone, or '' for all of the photo. */
  readonly zone: string;
  readonly name: string;
  /** On the later photo. */
  readonly outline: Outline;
}

const whole: Outline = [
  [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ],
];

/** Inside the picture, so that a share is one of what it shows. */
const inside = (outline: Outline): boolean => outline.flat().some(([x, y]) => x > 0 && x < 1 && y > 0 && y < 1);

/** Zones whose outline lies on one of the two photos, or on one that is laid on the later; then the whole photo. */
export const partsToCompare = (
  work: PhotoSeriesOfWork,
  earlier: string,
  later: string,
  fit: PhotoFit,
  wholeName: string,
): readonly PartToCompare[] => {
  const wayTo = (photo: string): PhotoFit['through'] | undefined => {
    if (photo === later) return (place) => place;
    return photo === earlier ? fit.through : fitBetween(work.fits, photo, later)?.through;
  };
  const found = new Map<string, PartToCompare>();
  for (const side of work.sides) {
    const through = wayTo(side.elevation.body.photo);
    if (!through) continue;
    for (const { zone, outline } of side.outlines) {
      const named = work.zones.find(({ thing }) => thing === zone);
      const there = outlineThrough(outline, through);
      if (named && inside(there) && !found.has(zone)) found.set(zone, { zone, name: zoneName(named), outline: there });
    }
  }
  const inOrder = work.zones.flatMap(({ thing }) => found.get(thing) ?? []);
  return [...inOrder, { zone: '', name: wholeName, outline: whole }];
};
