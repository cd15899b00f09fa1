import { nameOf, type Thing } from '../../engine/record';
import { calendarDay } from '../calendarDay';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { thingsWithin } from '../theThing';
import { whoIsAtWork } from '../whoIsAtWork';
import { roundDeed, roundRefusal } from './reasonCodes';

type RoundBody = Thing<'round'>['body'];
export type RoundStart = Pick<RoundBody, 'type' | 'date' | 'wet' | 'washed' | 'ownEye'> & {
  /** It was walked with pencil cards on that day, and is entered now by who is at work: who looked then, a thing name or ''. */
  readonly fromPaper?: { readonly looked: string };
};

/** Begins a survey walk around one sculpture. The date is the one the person confirmed, whatever the tablet's clock says. */
export const startRound = (
  desk: Desk,
  sculpture: string,
  start: RoundStart,
): Promise<Outcome<{ readonly round: string }>> =>
  attempt(async () => {
    const date = calendarDay(start.date);
    const zones = await thingsWithin(desk, 'zone', sculpture);
    if (zones.length === 0) refuse(roundRefusal('round: sculpture has no zones', {}));
    const round = nameOf.round(desk.newId());
    const { fromPaper, ...said } = start;
    const atWork = await whoIsAtWork(desk);
    const body: RoundBody = {
      sculpture,
      ...said,
      date,
      surveyor: fromPaper ? fromPaper.looked : atWork,
      ...(fromPaper ? { fromPaper: { entered: desk.today(), surveyor: atWork } } : {}),
    };
    const name = roundDeed('deed: round started', { type: start.type, date });
    must(await commitChanges(desk, name, [{ thing: round, kind: 'round', within: sculpture, body }]));
    return { round };
  });
