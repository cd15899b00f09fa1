import type { Reason, Thing } from '../../engine/record';
import type { Desk, Outcome } from '../desk';
import { keptPhoto, type PhotoFacts } from '../keepPhoto';
import { attempt, must } from '../outcome';
import { photoCame } from './photoCame';
import { expectPhoto } from './photoExpected';
import { photoForStation } from './photoForStation';
import type { Shot } from './shotList';

/** Where a shot belongs: its work, and the round whose list it is on. */
export interface ShotPlace {
  readonly sculpture: string;
  /** Null before the first round: the photo goes with the round of its day, if there is one. */
  readonly round: Thing<'round'> | null;
}

/** Noted before the camera opens, so that the photo is asked for again if the browser is ended behind it. */
export const expectShot = (
  desk: Desk,
  { sculpture, round }: ShotPlace,
  { of, thing }: Pick<Shot, 'of' | 'thing'>,
): Promise<Outcome> =>
  attempt(async () => {
    await expectPhoto(desk, { sculpture, [of]: thing, round: round?.thing });
    return {};
  });

/**
 * The photo of a shot, kept with what the round says of the surface and the person of the light. `notes` as of `keepPhoto`.
 */
export const photoForShot = (
  desk: Desk,
  { sculpture, round }: ShotPlace,
  { of, thing }: Pick<Shot, 'of' | 'thing'>,
  file: Blob,
  light: PhotoFacts['light'] | undefined,
): Promise<Outcome<{ readonly photo: string; readonly notes: readonly Reason[] }>> =>
  attempt(async () => {
    const ofRound = round && { round: round.thing, wet: round.body.wet, washed: round.body.washed };
    const facts: PhotoFacts = { ...ofRound, ...(light ? { light } : {}) };
    if (of === 'station') return must(await photoForStation(desk, sculpture, { station: thing }, file, facts));
    if (of === 'sentinel') return must(await photoForStation(desk, sculpture, { sentinel: thing }, file, facts));
    const kept = await keptPhoto(desk, sculpture, file, 'zone', { ...facts, zone: thing });
    await photoCame(desk, kept.changes);
    return { photo: kept.photo, notes: kept.notes };
  });
