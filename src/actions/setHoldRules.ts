import { nameOf } from '../engine/record';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';

/**
 * When green counts as back where nobody makes looks, and how much chance of it is too much; both shares, the level from 0.5 % on,
 * the chance 5 to 95 %. Each change raises the version; holds and advice are worked out anew.
 */
export const setHoldRules = (
  desk: Desk,
  own: { readonly returnLevel: number; readonly chance: number },
): Promise<Outcome<{ readonly version: number }>> =>
  attempt(async () => {
    const within = (x: number, low: number, high: number) => x >= low && x <= high;
    if (!within(own.returnLevel, 0.005, 1)) refuse(refusal('return level not valid', {}));
    if (!within(own.chance, 0.05, 0.95)) refuse(refusal('chance not valid', {}));
    const thing = nameOf.holdRules(desk.collection);
    const before = await desk.store.current(thing);
    const was = before && !before.gone ? before.lead.body : undefined;
    const last = before?.lead.body?.version;
    const version = typeof last === 'number' ? last : 0;
    if (was?.returnLevel === own.returnLevel && was?.chance === own.chance) return { version };
    const body = { version: version + 1, returnLevel: own.returnLevel, chance: own.chance };
    must(
      await commitChanges(desk, deedName('deed: hold rules set', { version: body.version }), [
        { thing, kind: 'holdRules', within: desk.collection, body },
      ]),
    );
    return { version: body.version };
  });
