import type { Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { thingsWithin } from '../theThing';
import { readSides, type Side } from './sidesOf';

/** A later or earlier photo from the station of a side. */
export interface OtherPhoto {
  readonly photo: Thing<'photo'>;
  /** YYYY-MM-DD or as vague as it is known: of its round, or as the camera says. */
  readonly day: string | undefined;
}

export interface SideOnMap extends Side {
  readonly station: Thing<'station'> | undefined;
  /** Latest first. */
  readonly others: readonly OtherPhoto[];
}

export interface ZoneMap {
  readonly sides: readonly SideOnMap[];
  readonly runOffs: readonly Thing<'runOff'>[];
  readonly stations: readonly Thing<'station'>[];
  /** Pairs that lay photos of the work on one another. */
  readonly fits: readonly Thing<'photoFit'>[];
}

const dayOf = ({ body }: Thing<'photo'>, rounds: ReadonlyMap<string, string>): string | undefined =>
  (body.round && rounds.get(body.round)) || body.taken?.slice(0, 10);

/** Sides with their outlines and the other photos of their stations, and where water runs. */
export const zoneMapOf = (desk: Desk, sculpture: string): Question<ZoneMap> =>
  ask(
    desk,
    `zone map ${sculpture}`,
    () => desk.store.counterOf(sculpture),
    async () => {
      const [sides, runOffs, stations, photos, fits, rounds] = await Promise.all([
        readSides(desk, sculpture),
        thingsWithin(desk, 'runOff', sculpture),
        thingsWithin(desk, 'station', sculpture),
        thingsWithin(desk, 'photo', sculpture),
        thingsWithin(desk, 'photoFit', sculpture),
        thingsWithin(desk, 'round', sculpture),
      ]);
      const days = new Map(rounds.map(({ thing, body }) => [thing, body.date]));
      const onMap = sides.map((side): SideOnMap => {
        const own = side.elevation.body.photo;
        const from = side.elevation.body.station ?? side.photo?.body.station;
        const others = photos
          .filter(({ thing, body }) => from !== undefined && body.station === from && thing !== own)
          .map((photo) => ({ photo, day: dayOf(photo, days) }))
          .sort((a, b) => (b.day ?? '').localeCompare(a.day ?? '') || (a.photo.thing < b.photo.thing ? -1 : 1));
        return { ...side, station: stations.find(({ thing }) => thing === from), others };
      });
      return {
        sides: onMap,
        runOffs: runOffs.sort((a, b) => (a.thing < b.thing ? -1 : 1)),
        fits,
        stations: stations.sort((a, b) => a.body.order - b.body.order),
      };
    },
  );
