import { named } from './named';
import type { Source } from './source';

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };

/** What belongs to the care of a work and is no record: somebody after us has to find it. */
export interface KeptThing {
  readonly id: string;
  readonly name: string;
  readonly source: Source;
}

const kept = (id: string, name: string): KeptThing => ({ id, name, source: practice });

export const keptThings: readonly KeptThing[] = named('keptThings', [
  kept('keys', 'Keys and codes'),
  kept('colour panels', 'Panels with the agreed colour'),
  kept('samples', 'Samples taken'),
  kept('spares', 'Spare inserts and removed parts'),
  kept('moulds', 'Moulds and casts'),
  kept('negatives', 'Negatives, slides and prints'),
  kept('drawings', 'Drawings and plans'),
  kept('papers', 'Reports, contracts, warranties'),
  kept('archive copy', 'Copies of this archive'),
  kept('materials', 'Wax, tools and ladders'),
  kept('other', 'Other'),
]);

export const keptThingOf = (id: string): KeptThing | undefined => keptThings.find((row) => row.id === id);
