import { type BodyOf, idPart } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { thingsOfKind } from '../theThing';

/** One thing erased: what, why and when. */
export interface ErasedRow {
  readonly thing: string;
  readonly of: BodyOf<'erasure'>['of'];
  readonly within: string;
  readonly reason: string;
  readonly day: string;
  /** Entries that are gone. */
  readonly entries: number;
}

/** All that was ever erased in this survey, the latest first. */
export const erasedSoFar = (desk: Desk): Question<readonly ErasedRow[]> =>
  ask(
    desk,
    'erased so far',
    () => desk.store.changes(),
    async () =>
      (await thingsOfKind(desk, 'erasure'))
        .map(({ thing, body, lead }) => ({
          thing,
          of: body.of,
          within: lead.within,
          reason: body.reason,
          day: body.date,
          entries: body.entries.length,
        }))
        .sort((a, b) => (a.day === b.day ? (a.thing < b.thing ? -1 : 1) : a.day < b.day ? 1 : -1)),
  );

/** Why and when a photo was erased; null for one that was not. */
export const erasedPhoto = (
  desk: Desk,
  photo: string,
): Question<{ readonly reason: string; readonly day: string } | null> =>
  ask(
    desk,
    `erased ${photo}`,
    () => desk.store.changes(),
    async () => {
      const erasure = (await desk.store.erased()).hashes.get(idPart(photo));
      return erasure ? { reason: String(erasure.body.reason), day: String(erasure.body.date) } : null;
    },
  );
