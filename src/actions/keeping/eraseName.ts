import { type Entry, holdsWords, inOwnWords, isKnown, nameOf, withAnyWords } from '../../engine/record';
import type { Desk, Outcome } from '../desk';
import { inTurn } from '../inTurn';
import { attempt, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { erasures, reasonGiven } from './erasure';
import { restated } from './restated';
import { spellingsOf } from './whatNames';

export interface EraseName {
  readonly reason: string;
  /** Things found by `whatNames` in which the name is to go too: said again with the role in its place. */
  readonly alsoIn: readonly string[];
}

/**
 * Erases a surveyor's name for good: the name kept apart in every spelling, and where asked the entries that hold it. The pseudonym, the
 * role and all that was seen stay. Not taken back by Undo; holds wherever this survey is joined with another.
 */
export const eraseName = (
  desk: Desk,
  surveyor: string,
  { reason, alsoIn }: EraseName,
): Promise<Outcome<{ readonly entries: number }>> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      const because = reasonGiven(reason);
      const person = await desk.store.current(surveyor);
      const own = await desk.store.entriesOf(nameOf.personName(surveyor));
      const words = await spellingsOf(desk, surveyor);
      if (!person || own.length === 0) return refuse(refusal('no name to erase', {}));
      if (words.some((each) => holdsWords(because, each))) refuse(refusal('reason holds the name', {}));
      const put = roleOf(person.lead, words);
      const otherwise = (body: Entry['body']) => withAnyWords(body, words, put, inOwnWords) as Entry['body'];
      const deed = desk.newId();
      const gone = own.map((entry) => entry.id);
      const anew = [];
      for (const thing of new Set(alsoIn)) {
        const all = await desk.store.entriesOf(thing);
        const holding = all.filter((e) => e.kind !== 'name' && isKnown(e) && otherwise(e.body) !== e.body);
        const ids = new Set(holding.map((entry) => entry.id));
        gone.push(...ids);
        anew.push(...restated(all, ids, otherwise, { deed, newId: desk.newId }));
      }
      const said = {
        of: 'name' as const,
        entries: gone,
        hashes: [],
        names: [nameOf.personName(surveyor)],
        reason: because,
      };
      await desk.store.commit({
        entries: [...(await erasures(desk, deed, desk.collection, said)), ...anew],
        deed: { id: deed, name: deedName('deed: name erased', {}), at: desk.now() },
        ...(alsoIn.length > 0 ? { instead: { words, put } } : {}),
      });
      return { entries: gone.length };
    }),
  );

/** What is put for the name: the role, unless that holds the name itself. */
const roleOf = ({ body }: Entry, words: readonly string[]): string => {
  const role = String(body.role ?? '');
  return role === '' || words.some((each) => holdsWords(role, each)) ? '—' : role;
};
