import type { Shot, ShotList } from '../../actions';
import type { Thing } from '../../engine/record';
import { date, w } from '../../words';
import { factsOf } from './stationText';

/** A shot as a list tells it. */
export interface ShotShown {
  readonly shot: Shot;
  /** On its badge: the letter of a station or zone; a square has its drawing. */
  readonly letter: string | undefined;
  readonly square: 'best' | 'worst' | undefined;
  readonly title: string;
  /** How the spot or the frame is found again. */
  readonly find: string | undefined;
  readonly facts: readonly string[];
  readonly station: Thing<'station'> | undefined;
}

export const shownShot = (list: ShotList, shot: Shot): ShotShown => {
  const none = { shot, letter: undefined, square: undefined, find: undefined, facts: [], station: undefined };
  if (shot.of === 'station') {
    const station = list.stations.find(({ thing }) => thing === shot.thing);
    if (!station) return { ...none, title: '' };
    const { letter, aim, mark } = station.body;
    return { ...none, letter, title: aim, find: mark, facts: factsOf(station.body), station };
  }
  if (shot.of === 'sentinel') {
    const body = list.sentinels.find(({ thing }) => thing === shot.thing)?.body;
    const zone = [...list.zones, ...list.zonesToday].find(({ thing }) => thing === body?.zone)?.body;
    if (!body) return { ...none, title: '' };
    return { ...none, square: body.which, title: w.stations.squareOf(body.which, zone?.letter ?? ''), find: body.find };
  }
  const zone = list.zones.find(({ thing }) => thing === shot.thing)?.body;
  return { ...none, letter: zone?.letter, title: zone?.name ?? '' };
};

/** What a person hears a shot called: "Station A, belt buckle". */
export const nameOfShot = ({ shot, letter, title }: ShotShown): string => {
  if (shot.of === 'station') return w.stations.nameOf(letter ?? '', title);
  return shot.of === 'zone' ? w.sculptures.zone.edit(letter ?? '', title) : title;
};

/** The day a photo speaks of: that of its round, else the camera's, else the day it was kept. */
export const dayOfPhoto = (list: ShotList, { body, lead }: Thing<'photo'>): string =>
  date(list.rounds.find(({ thing }) => thing === body.round)?.body.date ?? (body.taken ?? lead.at).slice(0, 10));
