import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { roundDeed, roundRefusal } from './reasonCodes';
import { memoryOf } from './roundMemory';

const setEnded = (desk: Desk, round: string, closed: boolean): Promise<Outcome> =>
  attempt(async () => {
    const memory = memoryOf(desk, round);
    const atHand = (await memory.ready()) ?? refuse(roundRefusal('round: not here', {}));
    const { date } = atHand.round.body;
    const name = roundDeed(closed ? 'deed: round closed' : 'deed: round opened again', { date, round });
    const change = { thing: round, patch: { ended: closed ? desk.today() : undefined } };
    return must(await memory.during(() => commitChanges(desk, name, [change]), [round]));
  });

/** The round is done. Zones without an answer stay without one: they are not turned into "not looked". */
export const closeRound = (desk: Desk, round: string): Promise<Outcome> => setEnded(desk, round, true);

export const reopenRound = (desk: Desk, round: string): Promise<Outcome> => setEnded(desk, round, false);
