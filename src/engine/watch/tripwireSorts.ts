/** What the level of a tripwire is counted in. */
export type TripwireUnit = 'months' | 'percent' | 'm2' | 'points' | 'money';

/** One sort of thing that may change a mind, and what must be said with it. */
export interface TripwireSort {
  readonly id: string;
  /** 'one': it is about one zone. 'any': about one zone, or about any of the work. 'none': about no zone. */
  readonly zone: 'one' | 'any' | 'none';
  /** Missing: there is no level. */
  readonly unit?: TripwireUnit;
  /** Least and most a level may be. */
  readonly least?: number;
  readonly most?: number;
  /** It asks for so many seasons in a row. */
  readonly seasons?: true;
  /** It asks for a day. */
  readonly day?: true;
  /** It is told from all rounds since the decision, not from the latest alone. */
  readonly allRounds?: true;
}

/** Every sort the app can watch. What cannot be told from the record is no tripwire: it belongs into the words of a decision. */
export const tripwireSorts = [
  { id: 'hold over', zone: 'one', unit: 'months', least: 0.5, most: 240, seasons: true },
  { id: 'hold under', zone: 'one', unit: 'months', least: 0.5, most: 240, seasons: true },
  { id: 'green share over', zone: 'one', unit: 'percent', least: 0.1, most: 100 },
  { id: 'green over', zone: 'any', unit: 'm2', least: 0.01, most: 100_000 },
  { id: 'bare over', zone: 'any', unit: 'm2', least: 0.01, most: 100_000 },
  { id: 'index under', zone: 'any', unit: 'points', least: 1, most: 100 },
  { id: 'surely worse', zone: 'any' },
  { id: 'stop word', zone: 'any', allRounds: true },
  { id: 'fund reaches', zone: 'none', unit: 'money', least: 1, most: 1_000_000 },
  { id: 'quote ends', zone: 'none' },
  { id: 'day comes', zone: 'none', day: true },
] as const satisfies readonly TripwireSort[];

export type TripwireSortId = (typeof tripwireSorts)[number]['id'];

const byId: ReadonlyMap<string, TripwireSort> = new Map(tripwireSorts.map((sort) => [sort.id, sort]));

/** The row of a sort, or undefined for a code this version does not know. */
export const tripwireSortOf = (id: string): TripwireSort | undefined => byId.get(id);
