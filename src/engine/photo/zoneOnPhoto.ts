import type { Reason } from '../record';
import { coverageNumbers } from './coverageNumbers';
import type { Outline, Size } from './point';
import { outlineArea } from './polygon';
import { because } from './reasonCodes';

/** Pixels of the photo the zone takes up. */
export const zonePixels = (zone: Outline, size: Size): number => outlineArea(zone) * size.width * size.height;

/** Why the zone is too small on the photo to be measured there; empty where it is not. */
export const tooSmall = (zone: Outline, size: Size): readonly Reason[] => {
  const pixels = zonePixels(zone, size);
  const least = coverageNumbers.leastZone.value;
  return pixels >= least
    ? []
    : [because('coverage: zone too small on the photo', { pixels: Math.round(pixels), least })];
};
