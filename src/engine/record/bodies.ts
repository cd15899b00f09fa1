import { bidCriteriaBody, bidScoreBody } from './bidScoreBodies';
import { fraction, listOf, maybe, note, number, positive, text, whole } from './bounds';
import {
  accessSheetBody,
  approvalBody,
  bidBody,
  campaignBody,
  causeBody,
  colourCardBody,
  completenessBody,
  hotDayBody,
  insertAfterBody,
  insertCareBody,
  insertReadingBody,
  layerBody,
  quantitiesBody,
} from './campaignBodies';
import {
  dueAnsweredBody,
  groundsAgreementBody,
  incidentBody,
  listTicksBody,
  methodSheetBody,
  moveBody,
  productBody,
  sitePlanBody,
  taskBody,
  weatherBody,
  yearPlanBody,
  yearVerdictBody,
} from './careBodies';
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
import { day, thingName } from './entry';
import { moneySchema } from './moneyBody';
import { keptWhereBody, paperIssuedBody, paperTextBody } from './paperBodies';
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
import {
  decisionBody,
  fundBody,
  giftBody,
  moneyRulesBody,
  optionBody,
  quoteBody,
  tripwireAnswerBody,
} from './planBodies';
import { findingBody, reratingBody, roundBody, visitBody } from './roundBodies';
import { treatmentBody, vagueDate } from './treatmentBody';
import { z } from './zod';

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
  /** What the name of the material rests on. */
  materialBy: maybe(z.enum(['on record', 'by its looks', 'not known'])),
  maker: maybe(text(200)),
  /** False: looked for, and not known. */
  makerKnown: maybe(z.boolean()),
  /** Where in the zone it sits, in words, so that it is found again. */
  where: maybe(text(300)),
  count: whole(1, 10000),
  removable: z.enum(['yes', 'no', 'not known']),
  note,
});
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
  methodSheet: methodSheetBody,
  weather: weatherBody,
  product: productBody,
  incident: incidentBody,
  move: moveBody,
  groundsAgreement: groundsAgreementBody,
  yearPlan: yearPlanBody,
  sitePlan: sitePlanBody,
  yearVerdict: yearVerdictBody,
  listTicks: listTicksBody,
  task: taskBody,
  dueAnswered: dueAnsweredBody,
  moneyRules: moneyRulesBody,
  option: optionBody,
  quote: quoteBody,
  fund: fundBody,
  gift: giftBody,
  decision: decisionBody,
  tripwireAnswer: tripwireAnswerBody,
  campaign: campaignBody,
  cause: causeBody,
  quantities: quantitiesBody,
  bid: bidBody,
  bidCriteria: bidCriteriaBody,
  bidScore: bidScoreBody,
  completeness: completenessBody,
  approval: approvalBody,
  colourCard: colourCardBody,
  layer: layerBody,
  hotDay: hotDayBody,
  insertCare: insertCareBody,
  insertReading: insertReadingBody,
  insertAfter: insertAfterBody,
  accessSheet: accessSheetBody,
  paperText: paperTextBody,
  paperIssued: paperIssuedBody,
  keptWhere: keptWhereBody,
} as const;

export type KindOfThing = keyof typeof bodySchemas;
export type BodyOf<K extends KindOfThing> = z.infer<(typeof bodySchemas)[K]>;
