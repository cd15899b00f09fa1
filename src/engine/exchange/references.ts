import type { Entry } from '../record';

/** One mention of another thing in a body. */
export interface Reference {
  readonly field: string;
  readonly name: string;
  /** Kinds of thing that may stand here; none named: any. */
  readonly kinds: readonly string[];
}

/** Fields that hold names of things, in whatever kind they occur, and what kinds they may name. */
const fields: Readonly<Record<string, readonly string[]>> = {
  sculpture: ['sculpture'],
  round: ['round'],
  zone: ['zone'],
  zones: ['zone'],
  surveyor: ['surveyor'],
  insert: ['insert'],
  photo: ['photo'],
  photos: ['photo'],
  finding: ['finding'],
  elevation: ['elevation'],
  station: ['station'],
  sentinel: ['sentinel'],
  fromZone: ['zone'],
  toZone: ['zone'],
  /** Of a Web Annotation's target; elsewhere a source is where something was taken over from, in words. */
  'target.source': ['photo'],
  onto: ['photo'],
  standHere: ['photo'],
  carriedFrom: ['round'],
  stainFrom: ['zone'],
  partOf: ['round'],
  apartFrom: ['round'],
  askAgain: ['zone'],
  about: [],
  into: ['zone'],
  work: ['sculpture'],
  works: ['sculpture'],
  stock: ['product'],
  countedWith: ['treatment'],
  weather: ['weather'],
  campaign: ['campaign'],
  photosBefore: ['photo'],
  photosAfter: ['photo'],
  option: ['option'],
  decision: ['decision'],
  renewedBy: ['quote'],
  replacedBy: ['decision'],
  fund: ['fund'],
  bid: ['bid'],
  takenBid: ['bid'],
  dryShade: ['photo'],
  drySun: ['photo'],
  wetShade: ['photo'],
  wetSun: ['photo'],
  agreedColour: ['agreedColour'],
  sameAs: ['layer'],
  hotDay: ['hotDay'],
  inserts: ['insert'],
};

const collect = (value: unknown, path: string, kinds: readonly string[] | undefined, found: Reference[]): void => {
  if (typeof value === 'string') {
    if (kinds && value !== '') found.push({ field: path, name: value, kinds });
  } else if (Array.isArray(value)) {
    for (const [i, each] of value.entries()) collect(each, `${path}[${i}]`, kinds, found);
  } else if (typeof value === 'object' && value !== null) {
    for (const [name, each] of Object.entries(value)) {
      const at = path === '' ? name : `${path}.${name}`;
      const field = Object.hasOwn(fields, at) ? at : name;
      collect(each, at, Object.hasOwn(fields, field) ? fields[field] : undefined, found);
    }
  }
};

/** All things a body of a known kind speaks of. Depth is that of the body: reading has held it to a few. */
export const referencesOf = (entry: Entry): readonly Reference[] => {
  const found: Reference[] = [];
  collect(entry.body, '', undefined, found);
  return found;
};
