import { nameOf } from '../../engine/record';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { theThing } from '../theThing';

/** Water runs from one zone of a work to another. */
export const setRunOff = (desk: Desk, from: string, to: string): Promise<Outcome<{ readonly runOff: string }>> =>
  attempt(async () => {
    if (from === to) refuse(refusal('water runs to itself', {}));
    const [one, other] = [await theThing(desk, 'zone', from), await theThing(desk, 'zone', to)];
    const { sculpture } = one.body;
    if (other.body.sculpture !== sculpture) refuse(refusal('not here', { thing: to }));
    const runOff = nameOf.runOff(from, to);
    const deed = deedName('deed: run-off drawn', { above: one.body.letter, below: other.body.letter });
    const body = { sculpture, fromZone: from, toZone: to };
    must(await commitChanges(desk, deed, [{ thing: runOff, kind: 'runOff', within: sculpture, body }]));
    return { runOff };
  });

export const removeRunOff = (desk: Desk, runOff: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'runOff', runOff);
    const [from, to] = [await theThing(desk, 'zone', body.fromZone), await theThing(desk, 'zone', body.toZone)];
    const deed = deedName('deed: run-off removed', { above: from.body.letter, below: to.body.letter });
    return must(await commitChanges(desk, deed, [{ thing: runOff, gone: true }]));
  });
