import type { PhotoOfWork, PhotoSeries, PhotoSeriesOfWork } from '../../actions';
import type { Thing } from '../../engine/record';
import { date, w, zoneName } from '../../words';

const words = w.compare;

const isStation = (of: PhotoSeries['of']): of is Thing<'station'> => 'letter' in of.body;

/** "Station A: belt buckle", "Worst square, zone D, coat". */
export const seriesName = ({ zones }: Pick<PhotoSeriesOfWork, 'zones'>, { of }: PhotoSeries): string => {
  if (isStation(of)) return words.station(of.body.letter, of.body.aim);
  const zone = zones.find(({ thing }) => thing === of.body.zone);
  return words.square(of.body.which, zone ? zoneName(zone) : '');
};

/** There are bytes but no picture: what they are was said when they were taken in. */
export const isUnshown = ({ photo: { body } }: PhotoOfWork): boolean =>
  body.flaw === 'not shown' || body.flaw === 'size untrue';

export const unshownWhy = ({ photo: { body } }: PhotoOfWork): string | undefined =>
  body.flaw && w.photos.flawWhat[body.flaw];

/** Light, surface and wash of a photo, as they stand in a sentence. */
const factNames: Readonly<Record<string, string>> = {
  ...words.lights,
  ...w.paperCondition.wet,
  ...w.paperCondition.washed,
};
export const factName = (fact: string): string => factNames[fact] ?? fact;

/** "12 May 2026, overcast, dry, before washing": the day, and what decides whether two photos are alike. */
export const photoName = ({ day, photo }: PhotoOfWork): string => {
  const { light, wet, washed } = photo.body;
  return words.taken(date(day), light && factName(light), wet && factName(wet), washed && factName(washed));
};
