import type { Firmness } from '../engine/firmness';
import type { Say } from './said';

/** How firm each place in the order of need is, in that order. */
export const shownFirmness = ({ draws, seed, zones, reasons }: Firmness, said: Say) => ({
  draws,
  seed,
  reasons: said(reasons),
  zones: zones.map(({ place, reasons: why, ...zone }) => ({
    ...zone,
    place: { ...place, reasons: said(place.reasons) },
    reasons: said(why),
  })),
});
