import { type Outline, readSelector } from '../../engine/photo';
import type { Thing } from '../../engine/record';
import type { Desk } from '../desk';
import { thingsWithin } from '../theThing';

/** Drawn here, taken from an earlier figure of this photo, or from the outline of the zone on the map. */
export type PartFrom = 'drawn' | 'measured' | 'outline';

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
  const here = outlines.find(({ body }) => body.zone === zone && body.target.source === photo.thing);
  const outline = here && readSelector(here.body.target.selector.value);
  return outline && outline.length > 0 ? { outline, from: 'outline' } : null;
};
