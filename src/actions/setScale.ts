import { nameOf, sameContent } from '../engine/record';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';

/**
 * The collection's own hazards (0 to 1, only for the kinds it changes) and action level (0 to 100). Each change raises the
 * version, which every score carries; scores made under another version are worked out anew.
 */
export const setScale = (
  desk: Desk,
  own: { readonly hazards: Readonly<Record<string, number>>; readonly actionLevel: number },
): Promise<Outcome<{ readonly version: number }>> =>
  attempt(async () => {
    const inRange = (x: number, top: number) => Number.isFinite(x) && x >= 0 && x <= top;
    if (!inRange(own.actionLevel, 100)) refuse(refusal('level not valid', {}));
    for (const [kind, hazard] of Object.entries(own.hazards))
      if (!inRange(hazard, 1)) refuse(refusal('hazard not valid', { kind }));
    const thing = nameOf.scale(desk.collection);
    const before = await desk.store.current(thing);
    const was = before?.lead.body;
    const before_ = { hazards: was?.hazards, actionLevel: was?.actionLevel };
    const version = typeof was?.version === 'number' ? was.version : 0;
    if (before && !before.gone && sameContent(before_, { hazards: own.hazards, actionLevel: own.actionLevel }))
      return { version };
    const body = { version: version + 1, hazards: { ...own.hazards }, actionLevel: own.actionLevel };
    must(
      await commitChanges(desk, deedName('deed: scale set', { version: body.version }), [
        { thing, kind: 'scale', within: desk.collection, body },
      ]),
    );
    return { version: body.version };
  });
