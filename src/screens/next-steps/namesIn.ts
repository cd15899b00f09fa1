import type { SculptureRow } from '../../actions';
import type { NeedOf } from '../../engine/condition';
import { type NameOfThing, w } from '../../words';

/** Titles of the works and names of the zones that stand in the list, for sentences. */
export const namesIn = (works: readonly SculptureRow[], needs: readonly NeedOf[]): NameOfThing => {
  const names = new Map<string, string>(works.map(({ thing, body }) => [thing, body.title]));
  for (const { record } of needs)
    for (const { thing, body } of record.zones) names.set(thing, w.thenAndNow.zoneNamed(body.letter, body.name));
  return (thing) => names.get(thing);
};
