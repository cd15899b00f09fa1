import type { BodyOf, Current, Entry, KindOfThing } from '../../src/engine/record';
import { currentOf, nameOf } from '../../src/engine/record';

/** A well-formed UUIDv7 that differs with its number, and says nothing of time. */
export const uuid = (n: number, ms = 1_780_000_000_000): string => {
  const time = ms.toString(16).padStart(12, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7000-8000-${n.toString(16).padStart(12, '0')}`;
};

export const sculpture = nameOf.sculpture(uuid(1));
export const zoneA = nameOf.zone(uuid(2));
export const zoneB = nameOf.zone(uuid(3));
export const round = nameOf.round(uuid(4));
export const collection = nameOf.collection(uuid(9));

/** One entry, with everything a test does not care about filled in. */
export const entry = (n: number, over: Partial<Entry> & { readonly thing: string }): Entry => ({
  id: uuid(n),
  kind: over.thing.slice(0, over.thing.indexOf('/')),
  within: sculpture,
  v: 1,
  at: '2026-05-12T10:41:07.120+01:00',
  by: '',
  device: 'tablet-1',
  n,
  deed: uuid(900_000 + n),
  replaces: [],
  body: {},
  ...over,
});

/** A first entry of a thing of a known kind. */
export const first = <K extends KindOfThing>(
  n: number,
  thing: string,
  kind: K,
  body: BodyOf<K>,
  over: Partial<Entry> = {},
): Entry => entry(n, { thing, kind, body: body as Entry['body'], ...over });

export const present = (...entries: Entry[]): Current => currentOf(entries);

export const bodies = {
  sculpture: { number: 'Q-01', title: 'Invented work' },
  zone: (over: Partial<BodyOf<'zone'>> = {}): BodyOf<'zone'> => ({
    sculpture,
    letter: 'A',
    name: 'Shoulder',
    order: 1,
    exposure: ['up', 'open'],
    reach: 'ladder',
    significance: 1,
    versions: [
      { n: 1, since: '2020-01-01', substrate: 'bronze', area: { m2: 1.2, low: 1, high: 1.4, method: 'typed' } },
    ],
    ...over,
  }),
  round: (over: Partial<BodyOf<'round'>> = {}): BodyOf<'round'> => ({
    sculpture,
    type: 'annual',
    date: '2026-05-12',
    wet: 'dry',
    washed: 'before wash',
    ownEye: true,
    surveyor: '',
    ...over,
  }),
  visit: (over: Partial<BodyOf<'visit'>> = {}): BodyOf<'visit'> => ({
    sculpture,
    round,
    zone: zoneA,
    zoneVersion: 1,
    state: 'found',
    ...over,
  }),
  finding: (over: Partial<BodyOf<'finding'>> = {}): BodyOf<'finding'> => ({
    sculpture,
    round,
    zone: zoneA,
    kind: 'green-spots',
    origin: 'metal',
    coverage: { value: 0.05, low: 0.04, high: 0.075, method: 'ladder' },
    severity: 'slight',
    activity: 'unclear',
    ...over,
  }),
};
