import { type Change, commitChanges } from '../commitChanges';
import type { Desk } from '../desk';
import { must } from '../outcome';
import { deedName } from '../reasonCodes';
import { noneExpected, noPhotoExpected } from './photoExpected';

/**
 * Says of a photo what is known of it and, in the same transaction, that none is expected any more: were that a step of its own and
 * failed, the person would be told that a photo was not kept which was.
 */
export const photoCame = async (desk: Desk, changes: readonly Change[]): Promise<void> => {
  const name = deedName('deed: photo kept', {});
  const { deed } = must(await commitChanges(desk, name, changes, { notes: noneExpected }));
  // A photo already here, of which nothing new was said.
  if (deed === '') await noPhotoExpected(desk);
};
