import type { Thing } from '../../engine/record';
import type { Desk } from '../desk';
import { thingsWithin } from '../theThing';

/**
 * The round a photo belongs to by its day: the one that was under way when the camera says it was taken. Where the camera
 * says nothing, the one under way now. Undefined where there is none: nothing is guessed across rounds.
 */
export const roundOn = (
  rounds: readonly Thing<'round'>[],
  taken: string | undefined,
  today: string,
): Thing<'round'> | undefined => {
  const own = rounds.filter(({ body }) => !body.partOf).toSorted((a, b) => (a.body.date < b.body.date ? 1 : -1));
  const day = taken?.slice(0, 10) ?? today;
  const open = own.find(({ body }) => !body.ended);
  if (!taken) return open;
  return own.find(({ body }) => body.date <= day && day <= (body.ended ?? today));
};

/** By the day it was taken, as `keptPhoto` asks for what is known of a photo. */
export const byItsDay = async (
  desk: Desk,
  sculpture: string,
): Promise<(taken: string | undefined) => Thing<'round'> | undefined> => {
  const rounds = await thingsWithin(desk, 'round', sculpture);
  return (taken) => roundOn(rounds, taken, desk.today());
};
