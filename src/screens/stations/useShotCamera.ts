import { expectShot, type Light, photoForShot, type Shot, type ShotList } from '../../actions';
import { sayReason, w } from '../../words';
import { say, useDeed, useDesk } from '../shell';

/** What the camera of a shot needs: the note before it opens, the keeping after it, and what went wrong in either. */
export const useShotCamera = (list: ShotList, shot: Shot, name: string, light: Light | undefined) => {
  const desk = useDesk();
  const keeping = useDeed();
  // Apart, for the camera's own entry must stay where it is while this is noted.
  const noting = useDeed();
  const place = { sculpture: list.sculpture.thing, round: list.round };
  const expect = async (): Promise<boolean> => {
    let isNoted = false;
    await noting.run(
      () => expectShot(desk, place, shot),
      () => {
        isNoted = true;
      },
    );
    return isNoted;
  };
  const keep = (file: File, done?: () => void) =>
    keeping.run(
      () => photoForShot(desk, place, shot, file, list.round?.body.ended ? undefined : light),
      ({ notes }) => {
        say([w.stations.shots.kept(name), ...notes.map((note) => sayReason(note))].join(' '));
        done?.();
      },
    );
  return { expect, keep, busy: keeping.busy, wrong: keeping.refused ?? noting.refused } as const;
};
