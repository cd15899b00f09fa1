import type { Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { thingsWithin } from '../theThing';
import { type PhotoOfWork, photosOf } from './photosOfWork';
import { readSides, type Side } from './sidesOf';

/** Photos taken from the same spot, or of the same square. */
export interface PhotoSeries {
  readonly of: Thing<'station'> | Thing<'sentinel'>;
  /** Oldest first. */
  readonly photos: readonly PhotoOfWork[];
}

export interface PhotoSeriesOfWork {
  readonly sculpture: Thing<'sculpture'>;
  /** Stations in order, then squares; those without a photo too. */
  readonly series: readonly PhotoSeries[];
  readonly photos: readonly PhotoOfWork[];
  readonly zones: readonly Thing<'zone'>[];
  readonly sides: readonly Side[];
  readonly fits: readonly Thing<'photoFit'>[];
  readonly measures: readonly Thing<'measure'>[];
}

/** What can be compared of a work: the photo of a side counts to the station it was taken from. Null where the work is not here. */
export const photoSeriesOf = (desk: Desk, sculpture: string): Question<PhotoSeriesOfWork | null> =>
  ask(
    desk,
    `photo series ${sculpture}`,
    () => desk.store.counterOf(sculpture),
    async () => {
      const work = await photosOf(desk, sculpture);
      if (!work) return null;
      const [sides, fits, measures] = await Promise.all([
        readSides(desk, sculpture),
        thingsWithin(desk, 'photoFit', sculpture),
        thingsWithin(desk, 'measure', sculpture),
      ]);
      const photos = work.photos.toReversed();
      const stationOf = new Map(sides.map(({ elevation: { body } }) => [body.photo, body.station]));
      const series = [
        ...work.stations.map((of) => ({
          of,
          photos: photos.filter(({ photo }) => (photo.body.station ?? stationOf.get(photo.thing)) === of.thing),
        })),
        ...work.sentinels.map((of) => ({ of, photos: photos.filter(({ photo }) => photo.body.sentinel === of.thing) })),
      ];
      return { sculpture: work.sculpture, series, photos, zones: work.zones, sides, fits, measures };
    },
  );
