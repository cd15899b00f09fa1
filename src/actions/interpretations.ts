import { nameOf } from '../engine/record';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';

/** A thought, never a finding: who thinks so, since when, about what. */
export const addInterpretation = (
  desk: Desk,
  sculpture: string,
  fields: { readonly statement: string; readonly by: string; readonly about?: string; readonly date?: string },
): Promise<Outcome<{ readonly interpretation: string }>> =>
  attempt(async () => {
    const statement = fields.statement.trim() || refuse(refusal('statement missing', {}));
    const by = fields.by.trim() || refuse(refusal('name missing', {}));
    const interpretation = nameOf.interpretation(desk.newId());
    const about = fields.about ? { about: fields.about } : {};
    must(
      await commitChanges(desk, deedName('deed: thought added', { by }), [
        {
          thing: interpretation,
          kind: 'interpretation',
          within: sculpture,
          body: { sculpture, statement, by, date: fields.date?.trim() || desk.today(), ...about },
        },
      ]),
    );
    return { interpretation };
  });

export const removeInterpretation = (desk: Desk, interpretation: string): Promise<Outcome> =>
  commitChanges(desk, deedName('deed: thought removed', {}), [{ thing: interpretation, gone: true }]);
