import { fitBetween, type Outline, outlineThrough, readSelector, writeSelector } from '../../engine/photo';
import type { Thing } from '../../engine/record';
import type { Desk } from '../desk';
import { thingsWithin } from '../theThing';

/** Drawn here, taken from an earlier figure of this photo, or from the outline of the zone on the map: on this photo, or on one it was laid on. */
export type PartFrom = 'drawn' | 'measured' | 'outline' | 'laid on';

interface Asked {
  readonly photo: Thing<'photo'>;
  readonly about: string;
  readonly zone: string;
  readonly measures: readonly Thing<'measure'>[];
  readonly drawn: Outline | undefined;
}

/**
 * The part of a photo a zone or square takes up. What was drawn here goes first, then what an earlier figure of this photo was measured
 * in, so that two ways speak of the same part, then the outline of the map.
 */
export const partOnPhoto = async (
  desk: Desk,
  { photo, about, zone, measures, drawn }: Asked,
): Promise<{ readonly outline: Outline; readonly from: PartFrom } | null> => {
  if (drawn && drawn.length > 0) return { outline: drawn, from: 'drawn' };
  const last = [...measures].sort((a, b) => (a.lead.at < b.lead.at ? 1 : -1))[0];
  const measured = last && readSelector(last.body.selector.value);
  if (measured && measured.length > 0) return { outline: measured, from: 'measured' };
  // A sentinel square is smaller than its zone: the outline of the zone is not its own.
  if (about !== zone) return null;
  const outlines = await thingsWithin(desk, 'outline', photo.body.sculpture);
  const ofZone = outlines.flatMap(({ body }) => {
    const outline = body.zone === zone ? readSelector(body.target.selector.value) : undefined;
    return outline && outline.length > 0 ? [{ outline, on: body.target.source }] : [];
  });
  const own = ofZone.find(({ on }) => on === photo.thing);
  if (own) return { outline: own.outline, from: 'outline' };
  const fits = await thingsWithin(desk, 'photoFit', photo.body.sculpture);
  for (const { outline, on } of ofZone) {
    const fit = fitBetween(fits, on, photo.thing);
    if (!fit || fit.verdict === 'not the same station') continue;
    // What falls outside this picture ends at its edge.
    const laid = readSelector(writeSelector(outlineThrough(outline, fit.through)));
    if (laid && laid.length > 0) return { outline: laid, from: 'laid on' };
  }
  return null;
};
