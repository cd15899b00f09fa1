import type { PhotoOfWork, PhotosOfWork } from '../../actions';
import { w, zoneName } from '../../words';

const words = w.photos;

export const squareName = (work: PhotosOfWork, sentinel: PhotosOfWork['sentinels'][number]): string => {
  const zone = work.zones.find(({ thing }) => thing === sentinel.body.zone);
  return words.square(sentinel.body.which, zone ? zoneName(zone) : '');
};

/** What a photo shows, in a few words: its station, its square, its zone; else what it was taken for. */
export const shownOn = (work: PhotosOfWork, { photo, zone }: PhotoOfWork): string => {
  const station = work.stations.find(({ thing }) => thing === photo.body.station);
  if (station) return words.station(station.body.letter, station.body.aim);
  const sentinel = work.sentinels.find(({ thing }) => thing === photo.body.sentinel);
  if (sentinel) return squareName(work, sentinel);
  const there = work.zones.find(({ thing }) => thing === zone);
  if (!there) return words.roles[photo.body.role];
  const named = zoneName(there);
  return photo.body.role === 'finding' ? `${words.roles.finding}, ${named}` : named;
};

/** Nobody has said yet what it shows. */
export const isUnsorted = ({ photo, zone }: PhotoOfWork): boolean =>
  photo.body.role === 'other' && !photo.body.station && !photo.body.sentinel && !zone;
