import { named } from './named';
import type { Source } from './source';

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };

/** How a zone lies to the weather (`lie`), what reaches it (`reached by`), and what may be at the root of a finding (`cause`). */
export interface Exposure {
  readonly id: string;
  readonly name: string;
  readonly sort: 'lie' | 'reached by' | 'cause';
  /** Wears a coating sooner: the look and the next wax are due earlier. */
  readonly severe?: true;
  readonly source: Source;
}

const exposure = (sort: Exposure['sort'], id: string, name: string, severe?: true): Exposure => ({
  id,
  name,
  sort,
  ...(severe ? { severe } : {}),
  source: practice,
});

export const exposures: readonly Exposure[] = named('exposures', [
  exposure('lie', 'up', 'faces up', true),
  exposure('lie', 'vertical', 'vertical'),
  exposure('lie', 'down', 'faces down'),
  exposure('lie', 'recess', 'recess or fold'),
  exposure('lie', 'joint', 'along a joint'),
  exposure('reached by', 'open', 'open to rain', true),
  exposure('reached by', 'part sheltered', 'partly sheltered'),
  exposure('reached by', 'sheltered', 'in rain shadow or under a roof'),
  exposure('reached by', 'drip', 'in the path of drips', true),
  exposure('reached by', 'splash', 'splash from the ground', true),
  exposure('reached by', 'spray', 'salt or fountain spray', true),
  exposure('reached by', 'waterline', 'at a waterline', true),
  exposure('reached by', 'handled', 'touched, climbed or sat on'),
  exposure('reached by', 'insert', 'next to an insert'),
  exposure('cause', 'sprinkler', 'sprinkler reaches it', true),
  exposure('cause', 'ponding', 'water stands on it', true),
  exposure('cause', 'birds', 'birds perch above'),
  exposure('cause', 'tree', 'tree drips or rubs'),
  exposure('cause', 'road salt', 'salt strewn near'),
  exposure('cause', 'mowing', 'mowing, trimming, fertiliser'),
]);

/** How a zone is reached; `from` says which cautions go with it. */
export interface Reach {
  readonly id: string;
  readonly name: string;
  readonly from: 'ground' | 'step' | 'ladder' | 'lift' | 'scaffold';
  readonly source: Source;
}

const reach = (from: Reach['from'], name: string): Reach => ({ id: from, name, from, source: practice });

export const reaches: readonly Reach[] = named('reaches', [
  reach('ground', 'from the ground'),
  reach('step', 'from a step'),
  reach('ladder', 'from a ladder'),
  reach('lift', 'from a lift'),
  reach('scaffold', 'from a scaffold'),
]);

export interface Substrate {
  readonly id: string;
  readonly name: string;
  readonly source: Source;
}

const substrate = (id: string, name: string): Substrate => ({ id, name, source: practice });

export const substrates: readonly Substrate[] = named('substrates', [
  substrate('bronze', 'bronze, cast'),
  substrate('sheet', 'bronze or copper, sheet'),
  substrate('brass', 'brass'),
  substrate('gilded', 'gilded'),
  substrate('painted', 'painted metal'),
  substrate('iron', 'iron or steel'),
  substrate('stone', 'stone'),
  substrate('concrete', 'concrete'),
  substrate('glass', 'glass or enamel'),
  substrate('other', 'other'),
]);

/** Why a zone was not looked at. None of them is ever read as "nothing found". */
export const reasonsNotLooked: readonly { readonly id: string; readonly name: string; readonly source: Source }[] =
  named('reasonsNotLooked', [
    { id: 'reach', name: 'could not reach it', source: practice },
    { id: 'wet', name: 'too wet to judge', source: practice },
    { id: 'covered', name: 'covered or wrapped', source: practice },
    { id: 'nest', name: 'nest in use', source: practice },
    { id: 'unsafe', name: 'not safe today', source: practice },
    { id: 'time', name: 'ran out of time or light', source: practice },
    { id: 'closed', name: 'closed off, or no leave to go there', source: practice },
    { id: 'other', name: 'other', source: practice },
  ]);

/** The spray-bottle check, best first. It tells how the outermost film repels water, not how well it protects. */
export const beadings: readonly {
  readonly id: 'beads' | 'flattened' | 'sheets' | 'wets';
  readonly name: string;
  readonly step: 0 | 1 | 2 | 3;
  /** Urgency and recommendation class proposed at least. */
  readonly proposes: 0 | 1;
  readonly source: Source;
}[] = named('beadings', [
  { id: 'beads', name: 'beads', step: 3, proposes: 0, source: practice },
  { id: 'flattened', name: 'flattened drops', step: 2, proposes: 0, source: practice },
  { id: 'sheets', name: 'sheets', step: 1, proposes: 1, source: practice },
  { id: 'wets', name: 'wets and darkens', step: 0, proposes: 1, source: practice },
]);

/** Sides offered for elevations and stations: words to begin with, for a side is kept as it was written. */
export const sides: readonly string[] = named('sides', [
  { id: 'north', name: 'north' },
  { id: 'north-east', name: 'north-east' },
  { id: 'east', name: 'east' },
  { id: 'south-east', name: 'south-east' },
  { id: 'south', name: 'south' },
  { id: 'south-west', name: 'south-west' },
  { id: 'west', name: 'west' },
  { id: 'north-west', name: 'north-west' },
  { id: 'from above', name: 'from above' },
]).map(({ name }) => name);
