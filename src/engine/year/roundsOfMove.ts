import { daysBetween, type Thing } from '../record';
import { yearNumbers } from './numbers';

/** The rounds that tell a work's state before and after a move. Null: none near enough. */
export interface RoundsOfMove {
  readonly before: Thing<'round'> | null;
  readonly after: Thing<'round'> | null;
  /** The work is back, or has come, and one after is due. */
  readonly afterDue: boolean;
}

/** For a loan to us the state counts from when it came; for the rest from when it was back, or moved for good. */
export const roundsOfMove = (move: Thing<'move'>, rounds: readonly Thing<'round'>[], today: string): RoundsOfMove => {
  const { sculpture, sort, left, back, backDue } = move.body;
  const own = rounds
    .filter(({ body }) => body.sculpture === sculpture)
    .sort((a, b) => a.body.date.localeCompare(b.body.date) || (a.thing < b.thing ? -1 : 1));
  const near = yearNumbers.roundNearMove.value;
  const arrived = sort === 'loan in' || (sort === 'move' && backDue === undefined) ? left : back;
  const before = own.filter(({ body }) => body.date <= left && daysBetween(body.date, left) <= near).at(-1) ?? null;
  const after =
    arrived === undefined
      ? null
      : (own.find(
          ({ thing, body }) =>
            body.date >= arrived && daysBetween(arrived, body.date) <= near && thing !== before?.thing,
        ) ?? null);
  return { before, after, afterDue: arrived !== undefined && arrived <= today && after === null };
};
