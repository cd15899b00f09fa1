import type { SculptureRecord, Thing } from '../../engine/record';
import { w } from '../../words';

const words = w.colour;

/** What stands at a work: its zones and its sentinel squares, by the names they have here. */
export interface PlacesOfWork {
  readonly zones: readonly Thing<'zone'>[];
  readonly sentinels: readonly Thing<'sentinel'>[];
}

export const placesOf = (record: SculptureRecord, sentinels: readonly Thing<'sentinel'>[]): PlacesOfWork => ({
  zones: record.zones,
  sentinels,
});

const letterOf = ({ zones }: PlacesOfWork, zone: string): string =>
  zones.find(({ thing }) => thing === zone)?.body.letter ?? '?';

/** "B, left arm", "Worst square, zone D"; the whole work where no place is named. */
export const placeName = (places: PlacesOfWork, about: string | undefined): string => {
  if (!about) return words.wholeWork;
  const zone = places.zones.find(({ thing }) => thing === about);
  if (zone) return words.place(zone.body.letter, zone.body.name);
  const sentinel = places.sentinels.find(({ thing }) => thing === about);
  if (sentinel) return words.square(sentinel.body.which, letterOf(places, sentinel.body.zone));
  return words.placeGone;
};

/** The zone a place is, or lies in. */
export const zoneOfPlace = (places: PlacesOfWork, about: string | undefined): string | undefined =>
  places.sentinels.find(({ thing }) => thing === about)?.body.zone ??
  places.zones.find(({ thing }) => thing === about)?.thing;

/** To choose from: the whole work first, then zones in walking order, then squares. */
export const placeOptions = (places: PlacesOfWork, squares: boolean) => [
  { value: '', label: words.wholeWork },
  ...places.zones.map(({ thing }) => ({ value: thing, label: placeName(places, thing) })),
  ...(squares ? places.sentinels.map(({ thing }) => ({ value: thing, label: placeName(places, thing) })) : []),
];
