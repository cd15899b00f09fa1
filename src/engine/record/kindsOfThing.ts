import type { KindOfThing } from './bodies';

/** Highest version of a body this code reads. An entry with a higher `v` is kept as it came, shown and not scored. */
export const bodyVersion = 1;

const known: Readonly<Record<KindOfThing, true>> = {
  collection: true,
  scale: true,
  holdRules: true,
  climate: true,
  eyeCheck: true,
  erasure: true,
  surveyor: true,
  name: true,
  sculpture: true,
  place: true,
  access: true,
  insert: true,
  insertValue: true,
  elevation: true,
  zone: true,
  round: true,
  visit: true,
  finding: true,
  rerating: true,
  classSet: true,
  personCheck: true,
  look: true,
  treatment: true,
  interpretation: true,
  photo: true,
  outline: true,
  runOff: true,
  station: true,
  sentinel: true,
  photoFit: true,
  measure: true,
  reading: true,
  agreedColour: true,
};

/** The kinds of thing this version knows, without loading their schemas. */
export const kindsOfThing = Object.keys(known) as readonly KindOfThing[];

/** True where a body of this kind and version can be read by the sums. */
export const isKnown = (entry: { readonly kind: string; readonly v: number }): boolean =>
  Object.hasOwn(known, entry.kind) && entry.v <= bodyVersion;
