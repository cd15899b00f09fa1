import type { KindOfFinding } from './kindOfFinding';
import { kindsAround } from './kindsAround';
import { kindsOfCoating } from './kindsOfCoating';
import { kindsOfMetal } from './kindsOfMetal';
import { kindsOfSurface } from './kindsOfSurface';

/**
 * Every kind of finding, in the order it is offered. Sound finish is a state of the surface, and sprinkler, drip, splash, ponding
 * and touch are causes (see exposures): none of them is a finding. Fresh and old are separate rows, so that activity is not guessed.
 */
export const kinds: readonly KindOfFinding[] = [...kindsOfSurface, ...kindsOfCoating, ...kindsOfMetal, ...kindsAround];

const byId = new Map(kinds.map((kind) => [kind.id, kind]));

/** The row of a kind, or undefined for a code this version does not know. */
export const kindOf = (id: string): KindOfFinding | undefined => byId.get(id);
