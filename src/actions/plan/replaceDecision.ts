import { type BodyOf, nameOf } from '../../engine/record';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must } from '../outcome';
import { deedName } from '../reasonCodes';
import { theThing } from '../theThing';
import { check, withoutEmpty } from './planned';

/**
 * A new decision in the place of an old one, and the old one pointing to it, in one deed: there are never two that hold, nor none.
 * The old one stays to be read; its tripwires are watched no more.
 */
export const replaceDecision = (
  desk: Desk,
  old: string,
  body: BodyOf<'decision'>,
): Promise<Outcome<{ readonly thing: string }>> =>
  attempt(async () => {
    const before = await theThing(desk, 'decision', old);
    const thing = nameOf.decision(desk.newId());
    const whole = withoutEmpty({ ...body, sculpture: before.body.sculpture });
    await check(desk, 'decision', thing, whole);
    must(
      await commitChanges(desk, deedName('deed: plan kept', { kind: 'decision' }), [
        { thing, kind: 'decision', within: before.body.sculpture ?? desk.collection, body: whole },
        { thing: old, patch: { replacedBy: thing } },
      ]),
    );
    return { thing };
  });
