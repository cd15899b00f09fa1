import type * as english from '../en/facts';
import type { Same } from '../tongue';
import { numbersSaid } from './numbersSaid';
import { sourcesSaid } from './sourcesSaid';

/** What a row of the engine says of itself beside its figure. */
export const facts: Same<typeof english.facts> = { ...sourcesSaid, ...numbersSaid };

export const fromMemory: Same<typeof english.fromMemory> = {
  word: 'Gedächtnis',
  said: (text) => `${text}, aus dem Gedächtnis.`,
};
