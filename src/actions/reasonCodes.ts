import type { Reason } from '../engine/record';

/** Why a deed was not done, with the names of the parameters. The sentences live in src/words/. */
export const refusalCodes = {
  'nothing to undo': [],
  'nothing changed': [],
  'not here': ['thing'],
  'title missing': [],
  'number missing': [],
  'name missing': [],
  'text missing': [],
  'statement missing': [],
  'role missing': [],
  'side missing': [],
  /** A day is not a calendar day between 1000 and 2200. */
  'day not valid': ['day'],
  'area not valid': [],
  'letter taken': ['letter'],
  /** A zone that was looked at cannot be removed; end it by a split or a join. */
  'zone has visits': ['letter', 'visits'],
  'zone has ended': ['letter'],
  'split needs two': [],
  'shares do not sum': ['sum'],
  'join needs two': [],
  'join across sculptures': [],
  /** The day is before the zone began, or before its last visit. */
  'day before last visit': ['day', 'last'],
  'order incomplete': [],
  'level not valid': [],
  'hazard not valid': ['kind'],
  'return level not valid': [],
  'climate not possible': ['what', 'low', 'high'],
  'chance not valid': [],
  'class not valid': [],
  'nothing to settle': [],
  'version not here': [],
  'rounds of two sculptures': [],
  'already closed': [],
  'value not valid': [],
  'count not valid': [],
  'nothing to carry': [],
  'file not read': ['name', 'said'],
  'file has problems': ['count'],
  'other collection': ['here', 'theirs'],
  'invented into real': [],
  'import done already': [],
  'demo not here': ['said'],
  'no eye check under way': [],
  'nothing measured': [],
  'no dots laid': [],
  'photo size not known': [],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** What the undo button names: one code for every deed. */
export const deedCodes = {
  'deed: collection set up': ['name'],
  'deed: collection renamed': ['name'],
  'deed: surveyor added': ['role'],
  'deed: surveyor edited': ['role'],
  'deed: scale set': ['version'],
  'deed: eye check made': ['patches'],
  'deed: eye check removed': ['day'],
  'deed: hold rules set': ['version'],
  'deed: climate set': [],
  'deed: sculpture added': ['title'],
  'deed: sculpture edited': ['title'],
  'deed: sculpture removed': ['title'],
  'deed: place set': [],
  'deed: access set': [],
  'deed: insert added': ['material'],
  'deed: insert edited': ['material'],
  'deed: insert removed': ['material'],
  'deed: insert value set': [],
  'deed: zone added': ['letter', 'name'],
  'deed: zone edited': ['letter', 'name'],
  'deed: zone versioned': ['letter', 'name'],
  'deed: zone removed': ['letter', 'name'],
  'deed: zone split': ['letter', 'parts'],
  'deed: zones joined': ['letters', 'name'],
  'deed: zones ordered': [],
  'deed: elevation added': ['side'],
  'deed: elevation removed': ['side'],
  'deed: treatment recorded': ['type'],
  'deed: treatment edited': ['type'],
  'deed: treatment removed': ['type'],
  'deed: class set': ['by'],
  'deed: class cleared': [],
  'deed: person check opened': [],
  'deed: person check closed': ['by'],
  'deed: thought added': ['by'],
  'deed: thought removed': [],
  'deed: photo kept': [],
  'deed: coverage measured': ['way', 'kind'],
  'deed: measurement removed': ['way', 'kind'],
  'deed: survey carried in': ['entries'],
  'deed: settled': ['kind'],
  'deed: rounds said one': [],
  'deed: rounds said apart': [],
  /** The undo of another deed. */
  'deed: taken back': ['code'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type RefusalCode = keyof typeof refusalCodes;
export type DeedCode = keyof typeof deedCodes;

type Params<T, C extends keyof T> = {
  readonly [P in T[C] extends readonly (infer S extends string)[] ? S : never]: string | number;
};

export const refusal = <C extends RefusalCode>(code: C, params: Params<typeof refusalCodes, C>): Reason => ({
  code,
  params,
});
export const deedName = <C extends DeedCode>(code: C, params: Params<typeof deedCodes, C>): Reason => ({
  code,
  params,
});
