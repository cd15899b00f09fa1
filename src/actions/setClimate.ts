import { type BodyOf, nameOf } from '../engine/record';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';

/** What a yearly mean can be at all; what the functions were derived from is narrower and only flagged. */
const possible = {
  temperature: [-60, 60],
  humidity: [0, 100],
  so2: [0, 10000],
  chloride: [0, 100000],
} as const;

/** The four yearly means of the place's air, and where they come from. A figure that cannot be is refused with a sentence. */
export const setClimate = (desk: Desk, climate: BodyOf<'climate'>): Promise<Outcome> =>
  attempt(async () => {
    for (const what of Object.keys(possible) as (keyof typeof possible)[]) {
      const [low, high] = possible[what];
      if (!(climate[what] >= low && climate[what] <= high))
        refuse(refusal('climate not possible', { what, low, high }));
    }
    must(
      await commitChanges(desk, deedName('deed: climate set', {}), [
        { thing: nameOf.climate(desk.collection), kind: 'climate', within: desk.collection, body: climate },
      ]),
    );
    return {};
  });
