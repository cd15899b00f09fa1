import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must } from '../outcome';
import type { PhotosOfWork } from '../photos';
import { deedName } from '../reasonCodes';
import { theThing } from '../theThing';

/** Old photos of one day, as the camera says; '' where it says nothing. */
export interface PhotosOfDay {
  readonly day: string;
  readonly photos: readonly string[];
  /** Round all of them are in, '' for none; undefined where they differ. */
  readonly round: string | undefined;
}

/** Photos brought in, by the day they were taken, the oldest first; those without a day last. */
export const daysOfPhotos = (work: PhotosOfWork, brought: readonly string[]): readonly PhotosOfDay[] => {
  const among = new Set(brought);
  const days = new Map<string, { photo: string; round: string }[]>();
  for (const { photo, round = '' } of work.photos) {
    if (!among.has(photo.thing)) continue;
    const day = photo.body.taken?.slice(0, 10) ?? '';
    days.set(day, [...(days.get(day) ?? []), { photo: photo.thing, round }]);
  }
  const last = '9999';
  return [...days]
    .sort(([a], [b]) => ((a || last) < (b || last) ? -1 : 1))
    .map(([day, rows]) => ({
      day,
      photos: rows.map(({ photo }) => photo),
      round: rows.every(({ round }) => round === rows[0]?.round) ? rows[0]?.round : undefined,
    }));
};

/** Gives photos of one day to a round, or to none, as one deed. */
export const giveToRound = (desk: Desk, photos: readonly string[], round: string | undefined): Promise<Outcome> =>
  attempt(async () => {
    if (round) await theThing(desk, 'round', round);
    return must(
      await commitChanges(
        desk,
        deedName('deed: photos sorted', { count: photos.length }),
        photos.map((thing) => ({ thing, patch: { round } })),
      ),
    );
  });
