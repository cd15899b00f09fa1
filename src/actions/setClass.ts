import { nameOf } from '../engine/record';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing } from './theThing';

export interface ClassesSet {
  readonly condition?: number | undefined;
  readonly urgency?: number | undefined;
  readonly recommendation?: number | undefined;
  /** The person who sets them. */
  readonly setBy: string;
  readonly note?: string | undefined;
}

/** The rule proposes, a named person decides. `about` is a zone or the sculpture; a class left out stays with the rule. */
export const setClass = (desk: Desk, round: string, about: string, set: ClassesSet): Promise<Outcome> =>
  attempt(async () => {
    const setBy = set.setBy.trim() || refuse(refusal('name missing', {}));
    const levels = [set.condition, set.urgency, set.recommendation].filter((level) => level !== undefined);
    if (levels.length === 0 || levels.some((level) => ![0, 1, 2, 3].includes(level)))
      refuse(refusal('class not valid', {}));
    const { sculpture } = (await theThing(desk, 'round', round)).body;
    const body = { ...set, setBy, sculpture, round, about } as {
      setBy: string;
      sculpture: string;
      round: string;
      about: string;
    };
    return must(
      await commitChanges(desk, deedName('deed: class set', { by: setBy }), [
        { thing: nameOf.classSet(round, about), kind: 'classSet', within: sculpture, body },
      ]),
    );
  });

/** Back to what the rule proposes. */
export const clearClass = (desk: Desk, round: string, about: string): Promise<Outcome> =>
  commitChanges(desk, deedName('deed: class cleared', {}), [{ thing: nameOf.classSet(round, about), gone: true }]);
