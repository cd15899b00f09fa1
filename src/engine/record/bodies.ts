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

const text = (max: number) => z.string().max(max);
const note = text(4000).optional();
const fraction = z.number().min(0).max(1);
/** A date as vague as it is known: 2019, 2019-05, 2019-05-12, or words such as "before 2021". */
export const vagueDate = text(60);

export const sculptureBody = z.looseObject({
  number: text(60),
  title: text(300),
  maker: text(300).optional(),
  date: vagueDate.optional(),
  materials: text(500).optional(),
  dimensions: text(300).optional(),
  note,
});

export const placeBody = z.looseObject({ sculpture: thingName, text: text(1000) });
export const accessBody = z.looseObject({ sculpture: thingName, text: text(2000) });
export const insertBody = z.looseObject({
  sculpture: thingName,
  zone: thingName.optional(),
  material: text(200),
  count: z.int().min(1).max(10000),
  removable: z.enum(['yes', 'no', 'not known']),
  note,
});
export const moneySchema = z.looseObject({ minor: z.int(), currency: z.string().regex(/^[A-Z]{3}$/) });
export const insertValueBody = z.looseObject({ insert: thingName, value: moneySchema, note });

export const areaPart = z.looseObject({
  solid: z.enum(['cylinder', 'cap', 'cone', 'box', 'disc', 'strip']),
  /** Metres, in the order the solid asks for; see engine/condition area formulas. */
  sizes: z.array(z.number().positive().max(1000)).min(1).max(3),
  /** Share of the solid that belongs to the zone. */
  share: fraction,
});

/** Zone area in m2 with its range. */
export const areaBody = z
  .looseObject({
    m2: z.number().positive().max(100000),
    low: z.number().min(0),
    high: z.number().positive(),
    method: z.enum(['typed', 'solids', 'strips', 'outline']),
    parts: z.array(areaPart).optional(),
  })
  .refine((a) => a.low <= a.m2 && a.m2 <= a.high, 'range ends out of order');

/** What may not be edited after a zone's first visit without making a new version of it. */
export const zoneVersion = z.looseObject({
  n: z.int().min(1),
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
  significance: z.number().min(0.5).max(2),
  versions: z.array(zoneVersion).min(1),
  /** This zone ended on a day and lives on in others; shares of its area sum to 1. */
  split: z
    .looseObject({ on: day, into: z.array(z.looseObject({ zone: thingName, share: fraction })).min(2) })
    .refine((s) => Math.abs(s.into.reduce((sum, part) => sum + part.share, 0) - 1) <= 0.02, 'shares do not add up')
    .optional(),
  /** This zone ended on a day and became part of another. */
  joined: z.looseObject({ on: day, into: thingName }).optional(),
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
  ended: day.optional(),
  /** Zones drawn to be asked again. */
  askAgain: z.array(thingName).optional(),
  /** This round is one with another begun apart. */
  partOf: thingName.optional(),
  /** Said not to be one with these. */
  apartFrom: z.array(thingName).optional(),
  note,
});

export const beading = z.enum(['beads', 'flattened', 'sheets', 'wets']);

export const visitBody = z.looseObject({
  sculpture: thingName,
  round: thingName,
  zone: thingName,
  zoneVersion: z.int().min(1),
  state: z.enum(['found', 'nothing', 'carried', 'not looked']),
  /** Why not looked: code of trade/reasonsNotLooked. */
  reason: text(60).optional(),
  /** The round a carried answer was taken from. */
  carriedFrom: thingName.optional(),
  beading: beading.optional(),
  photos: z.array(thingName).optional(),
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
  coverage: coverageBody.optional(),
  /** Kinds measured by count. */
  count: z.enum(['one', 'two to five', 'more']).optional(),
  severity,
  activity,
  /** Looked for, and no longer there. */
  cleared: z.literal(true).optional(),
  /** Taken over from an earlier round, not judged again. */
  carriedFrom: thingName.optional(),
  /** After own eye first, against the earlier value. */
  against: z.enum(['same', 'changed', 'earlier was wrong']).optional(),
  /** Where a stain comes from, as far as seen. */
  stainFrom: thingName.optional(),
  photos: z.array(thingName).optional(),
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
  condition: z.int().min(0).max(3).optional(),
  urgency: z.int().min(0).max(3).optional(),
  recommendation: z.int().min(0).max(3).optional(),
  /** Named person who set it. */
  setBy: text(200),
  note,
});

export const personCheckBody = z.looseObject({
  sculpture: thingName,
  zone: thingName.optional(),
  finding: thingName.optional(),
  what: text(500),
  opened: day,
  closed: z.looseObject({ on: day, by: text(200), note: text(2000).optional() }).optional(),
});

export const lookBody = z.looseObject({
  sculpture: thingName,
  zone: thingName,
  date: day,
  result: z.enum(['clear', 'green', 'unsure']),
  planned: z.boolean(),
  wet: z.enum(['dry', 'damp', 'wet']).optional(),
  photos: z.array(thingName).optional(),
  note,
});

export const treatmentBody = z.looseObject({
  sculpture: thingName,
  zones: z.array(thingName),
  /** Code of trade/treatments. */
  type: text(60),
  date: vagueDate,
  product: text(300).optional(),
  coats: z.int().min(1).max(20).optional(),
  by: text(300).optional(),
  /** The list or report this was taken over from. */
  source: text(300).optional(),
  note,
});

export const interpretationBody = z.looseObject({
  sculpture: thingName,
  about: thingName.optional(),
  statement: text(4000),
  by: text(200),
  date: vagueDate,
  /** The report this was taken over from. */
  source: text(300).optional(),
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
