import type { Thing } from '../record';

/** The four photos of an agreed-colour card, and how the surface and the light were in each. */
export const cardPhotos = [
  { field: 'dryShade', wet: 'dry', sun: false },
  { field: 'drySun', wet: 'dry', sun: true },
  { field: 'wetShade', wet: 'wet', sun: false },
  { field: 'wetSun', wet: 'wet', sun: true },
] as const;
export type CardPhoto = (typeof cardPhotos)[number];

/**
 * The latest photo since the card that shows what one of its photos shows: from the same station, else of one of its zones.
 * `alike`: it is known to be as dry or wet, and in sun or shade; where there is one alike it comes before any later one that is not.
 */
export const laterPhoto = (
  { body }: Thing<'colourCard'>,
  slot: CardPhoto,
  photos: readonly Thing<'photo'>[],
): { readonly photo: Thing<'photo'>; readonly alike: boolean } | undefined => {
  const own = photos.find(({ thing }) => thing === body[slot.field]);
  const later = photos
    .filter((photo) => photo !== own && dayOf(photo) > body.date && showsTheSame(photo, own, body.zones))
    .map((photo) => ({ photo, alike: isAlike(photo, slot) }))
    .sort((a, b) => Number(a.alike) - Number(b.alike) || dayOf(a.photo).localeCompare(dayOf(b.photo)));
  return later.at(-1);
};

/** A photo that does not say when it was taken is not known to be later than anything. */
const dayOf = ({ body }: Thing<'photo'>): string => body.taken?.slice(0, 10) ?? '';

const showsTheSame = (photo: Thing<'photo'>, own: Thing<'photo'> | undefined, zones: readonly string[]): boolean =>
  own?.body.station !== undefined
    ? photo.body.station === own.body.station
    : photo.body.zone !== undefined && zones.includes(photo.body.zone);

const isAlike = ({ body }: Thing<'photo'>, { wet, sun }: CardPhoto): boolean =>
  body.wet === wet && (sun ? body.light === 'sun' : body.light === 'open shade' || body.light === 'overcast');
