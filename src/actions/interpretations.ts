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

/** What one person said of a work at once, each statement a thought of its own: kept together, undone together. */
export const addInterpretations = (
  desk: Desk,
  sculpture: string,
  fields: {
    readonly by: string;
    readonly date?: string;
    /** Where they were taken over from: "conservator's page". */
    readonly source: string;
    readonly statements: readonly { readonly statement: string; readonly about?: string }[];
  },
): Promise<Outcome<{ readonly interpretations: readonly string[] }>> =>
  attempt(async () => {
    const said = fields.statements.flatMap(({ statement, about }) =>
      statement.trim() ? [{ statement: statement.trim(), ...(about ? { about } : {}) }] : [],
    );
    if (said.length === 0) refuse(refusal('statement missing', {}));
    const by = fields.by.trim() || refuse(refusal('name missing', {}));
    const date = fields.date?.trim() || desk.today();
    const changes = said.map((one) => ({
      thing: nameOf.interpretation(desk.newId()),
      kind: 'interpretation' as const,
      within: sculpture,
      body: { sculpture, ...one, by, date, source: fields.source },
    }));
    must(await commitChanges(desk, deedName('deed: thoughts added', { by, count: said.length }), changes));
    return { interpretations: changes.map(({ thing }) => thing) };
  });

export const removeInterpretation = (desk: Desk, interpretation: string): Promise<Outcome> =>
  commitChanges(desk, deedName('deed: thought removed', {}), [{ thing: interpretation, gone: true }]);
