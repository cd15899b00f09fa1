import type { PhotoSeriesOfWork } from '../../actions';
import { type Classifier, classifierOf, type Refused } from '../../engine/photo';
import type { BodyOf } from '../../engine/record';

type Sample = NonNullable<BodyOf<'measure'>['working']['green']>[number];
type Brush = BodyOf<'measure'>['working']['brush'];

/** Spots touched on a photo, with the colour it shows there. */
export interface Spots {
  readonly green: readonly Sample[];
  readonly sound: readonly Sample[];
  readonly brush?: Brush;
}

export const noSpots: Spots = { green: [], sound: [] };

/** Those of the mask last measured on the photo, of this zone before any other. */
export const keptSpots = ({ measures }: PhotoSeriesOfWork, photo: string, zone: string): Spots | undefined => {
  const masks = measures
    .filter(({ body }) => body.photo === photo && body.working.green && body.working.sound)
    .sort((a, b) => (a.lead.at < b.lead.at ? 1 : -1));
  const found = masks.find(({ body }) => body.about === zone) ?? masks[0];
  if (!found) return undefined;
  const { green = [], sound = [], brush } = found.body.working;
  return { green, sound, brush };
};

/** Whether the spots tell green from sound on their photo, or why not. */
export const tellsApart = ({ green, sound }: Spots): Classifier | Refused =>
  classifierOf(
    green.map(({ colour }) => colour),
    sound.map(({ colour }) => colour),
  );

/** How the pixels are asked for: the colours alone. */
export const tapsOf = ({ green, sound, brush }: Spots) => ({
  green: green.map(({ colour }) => colour),
  sound: sound.map(({ colour }) => colour),
  ...(brush ? { brush } : {}),
});
