import { fraction, listOf, maybe, note, number, pattern, positive, text, whole } from './bounds';
import {
  climateBody,
  collectionBody,
  erasureBody,
  eyeCheckBody,
  holdRulesBody,
  personNameBody,
  scaleBody,
  surveyorBody,
} from './collectionBodies';
import { coverageBody } from './coverageBody';
import { day, thingName } from './entry';
import {
  agreedColourBody,
  elevationBody,
  measureBody,
  outlineBody,
  photoBody,
  photoFitBody,
  readingBody,
  runOffBody,
  sentinelBody,
  stationBody,
} from './photoBodies';
import { z } from './zod';

/** A date as vague as it is known: 2019, 2019-05, 2019-05-12, or words such as "before 2021". */
export const vagueDate = text(60);

export const sculptureBody = z.looseObject({
  number: text(60),
  title: text(300),
  maker: maybe(text(300)),
  date: maybe(vagueDate),
  materials: maybe(text(500)),
  dimensions: maybe(text(300)),
  note,
});

export const placeBody = z.looseObject({ sculpture: thingName, text: text(1000) });
export const accessBody = z.looseObject({ sculpture: thingName, text: text(2000) });
export const insertBody = z.looseObject({
  sculpture: thingName,
  zone: maybe(thingName),
  material: text(200),
  count: whole(1, 10000),
  removable: z.enum(['yes', 'no', 'not known']),
  note,
});
export const moneySchema = z.looseObject({ minor: z.int(), currency: pattern(/^[A-Z]{3}$/) });
export const insertValueBody = z.looseObject({ insert: thingName, value: moneySchema, note });

export const areaPart = z.looseObject({
  solid: z.enum(['cylinder', 'cap', 'cone', 'box', 'disc', 'strip']),
  /** Metres, in the order the solid asks for; see engine/condition area formulas. */
  sizes: listOf(positive(1000), 1, 3),
  /** Share of the solid that belongs to the zone. */
  share: fraction,
});

/** Zone area in m2 with its range. */
export const areaBody = z
  .looseObject({
    m2: positive(100000),
    low: number(0),
    high: positive(),
    method: z.enum(['typed', 'solids', 'strips', 'outline']),
    parts: maybe(z.array(areaPart)),
  })
  .check(z.refine((a) => a.low <= a.m2 && a.m2 <= a.high, 'range ends out of order'));

/** What may not be edited after a zone's first visit without making a new version of it. */
export const zoneVersion = z.looseObject({
  n: whole(1),
  since: day,
  substrate: text(60),
  area: areaBody,
});

export const zoneBody = z.looseObject({
  sculpture: thingName,
  letter: text(4),
  name: text(200),
  /** Walking order. */
  order: z.number(),
  /** Codes of trade/exposures: 'up', 'vertical', 'open', 'spray' ... */
  exposure: z.array(text(40)),
  reach: text(40),
  /** Weight beside area, 0.5 to 2; 1 is usual. */
  significance: number(0.5, 2),
  versions: listOf(zoneVersion, 1),
  /** This zone ended on a day and lives on in others; shares of its area sum to 1. */
  split: maybe(
    z
      .looseObject({ on: day, into: listOf(z.looseObject({ zone: thingName, share: fraction }), 2) })
      .check(
        z.refine(
          (s) => Math.abs(s.into.reduce((sum, part) => sum + part.share, 0) - 1) <= 0.02,
          'shares do not add up',
        ),
      ),
  ),
  /** This zone ended on a day and became part of another. */
  joined: maybe(z.looseObject({ on: day, into: thingName })),
  note,
});

export const roundBody = z.looseObject({
  sculpture: thingName,
  type: z.enum(['annual', 'autumn', 'before treatment', 'after treatment', 'incident']),
  /** The day a person confirmed; what happened when is said by this, never by an entry's `at`. */
  date: day,
  wet: z.enum(['dry', 'damp', 'wet']),
  washed: z.enum(['before wash', 'after wash']),
  /** Earlier values are hidden until this one is made. */
  ownEye: z.boolean(),
  surveyor: z.string(),
  /** Set when the round is closed. */
  ended: maybe(day),
  /** Zones drawn to be asked again. */
  askAgain: maybe(z.array(thingName)),
  /** This round is one with another begun apart. */
  partOf: maybe(thingName),
  /** Said not to be one with these. */
  apartFrom: maybe(z.array(thingName)),
  note,
});

export const beading = z.enum(['beads', 'flattened', 'sheets', 'wets']);

export const visitBody = z.looseObject({
  sculpture: thingName,
  round: thingName,
  zone: thingName,
  zoneVersion: whole(1),
  state: z.enum(['found', 'nothing', 'carried', 'not looked']),
  /** Why not looked: code of trade/reasonsNotLooked. */
  reason: maybe(text(60)),
  /** The round a carried answer was taken from. */
  carriedFrom: maybe(thingName),
  beading: maybe(beading),
  photos: maybe(z.array(thingName)),
  note,
});

export const severity = z.enum(['slight', 'moderate', 'severe']);
export const activity = z.enum(['active', 'unclear', 'stable']);

export const findingBody = z.looseObject({
  sculpture: thingName,
  round: thingName,
  zone: thingName,
  /** Code of trade/kinds; an unknown code is shown, not scored, and said. */
  kind: text(80),
  origin: z.enum(['dirt', 'stain', 'metal']),
  /** Kinds measured by area, and length or presence where a share was given. */
  coverage: maybe(coverageBody),
  /** Kinds measured by count. */
  count: maybe(z.enum(['one', 'two to five', 'more'])),
  severity,
  activity,
  /** Looked for, and no longer there. */
  cleared: maybe(z.literal(true)),
  /** Taken over from an earlier round, not judged again. */
  carriedFrom: maybe(thingName),
  /** After own eye first, against the earlier value. */
  against: maybe(z.enum(['same', 'changed', 'earlier was wrong'])),
  /** Where a stain comes from, as far as seen. */
  stainFrom: maybe(thingName),
  photos: maybe(z.array(thingName)),
  note,
});

export const reratingBody = z.looseObject({
  sculpture: thingName,
  round: thingName,
  zone: thingName,
  ratings: z.array(
    z.looseObject({
      kind: text(80),
      origin: z.enum(['dirt', 'stain', 'metal']),
      coverage: coverageBody,
      first: coverageBody,
    }),
  ),
});

export const classSetBody = z.looseObject({
  sculpture: thingName,
  round: thingName,
  about: thingName,
  condition: maybe(whole(0, 3)),
  urgency: maybe(whole(0, 3)),
  recommendation: maybe(whole(0, 3)),
  /** Named person who set it. */
  setBy: text(200),
  note,
});

export const personCheckBody = z.looseObject({
  sculpture: thingName,
  zone: maybe(thingName),
  finding: maybe(thingName),
  what: text(500),
  opened: day,
  closed: maybe(z.looseObject({ on: day, by: text(200), note: maybe(text(2000)) })),
});

export const lookBody = z.looseObject({
  sculpture: thingName,
  zone: thingName,
  date: day,
  result: z.enum(['clear', 'green', 'unsure']),
  planned: z.boolean(),
  wet: maybe(z.enum(['dry', 'damp', 'wet'])),
  photos: maybe(z.array(thingName)),
  note,
});

export const treatmentBody = z.looseObject({
  sculpture: thingName,
  zones: z.array(thingName),
  /** Code of trade/treatments. */
  type: text(60),
  date: vagueDate,
  product: maybe(text(300)),
  coats: maybe(whole(1, 20)),
  by: maybe(text(300)),
  /** The list or report this was taken over from. */
  source: maybe(text(300)),
  note,
});

export const interpretationBody = z.looseObject({
  sculpture: thingName,
  about: maybe(thingName),
  statement: text(4000),
  by: text(200),
  date: vagueDate,
  /** The report this was taken over from. */
  source: maybe(text(300)),
});

/** Every kind of thing a body is checked for. A kind not here is kept as it came. */
export const bodySchemas = {
  collection: collectionBody,
  scale: scaleBody,
  holdRules: holdRulesBody,
  climate: climateBody,
  eyeCheck: eyeCheckBody,
  erasure: erasureBody,
  surveyor: surveyorBody,
  name: personNameBody,
  sculpture: sculptureBody,
  place: placeBody,
  access: accessBody,
  insert: insertBody,
  insertValue: insertValueBody,
  zone: zoneBody,
  round: roundBody,
  visit: visitBody,
  finding: findingBody,
  rerating: reratingBody,
  classSet: classSetBody,
  personCheck: personCheckBody,
  look: lookBody,
  treatment: treatmentBody,
  interpretation: interpretationBody,
  photo: photoBody,
  elevation: elevationBody,
  outline: outlineBody,
  runOff: runOffBody,
  station: stationBody,
  sentinel: sentinelBody,
  photoFit: photoFitBody,
  measure: measureBody,
  reading: readingBody,
  agreedColour: agreedColourBody,
} as const;

export type KindOfThing = keyof typeof bodySchemas;
export type BodyOf<K extends KindOfThing> = z.infer<(typeof bodySchemas)[K]>;
