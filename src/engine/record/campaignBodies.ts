import { listOf, maybe, note, number, positive, text, whole } from './bounds';
import { clockTime } from './careBodies';
import { day, instant, thingName } from './entry';
import { moneySchema, personInRole } from './moneyBody';
import { z } from './zod';

export const campaignBody = z.looseObject({
  sculpture: thingName,
  title: text(200),
  opened: day,
  /** Code of trade/campaignSteps. */
  step: text(60),
  option: maybe(thingName),
  decision: maybe(thingName),
  fund: maybe(thingName),
  /** The bid that was taken. */
  takenBid: maybe(thingName),
  /** Who decided on it, when and why: a person, no sum. */
  takenBy: maybe(personInRole),
  takenOn: maybe(day),
  takenWhy: maybe(text(2000)),
  began: maybe(day),
  ended: maybe(day),
  accepted: maybe(day),
  /** Until when the contractor answers for it. */
  warrantyUntil: maybe(day),
  warrantyWho: maybe(text(200)),
  warrantyTerms: maybe(text(2000)),
  /** Why the money or the work is held until the report is there. */
  givenUp: maybe(text(1000)),
  note,
});

/** A cause looked for before any treatment. */
export const causeBody = z.looseObject({
  sculpture: thingName,
  /** Code of trade/causes. */
  sort: text(60),
  zones: z.array(thingName),
  seen: maybe(text(1000)),
  found: day,
  state: z.enum(['open', 'being removed', 'removed', 'cannot be removed', 'not a cause']),
  changed: maybe(day),
  why: maybe(text(1000)),
  note,
});

/** Lines of work that bidders price one by one. Areas with the range the survey gives them. */
export const quantitiesBody = z.looseObject({
  sculpture: thingName,
  campaign: thingName,
  date: day,
  items: listOf(
    z.looseObject({
      id: text(40, 1),
      zone: maybe(thingName),
      name: text(300),
      /** Code of trade/workItems, or own words. */
      task: text(200),
      unit: z.enum(['m2', 'piece', 'sum', 'day']),
      amount: number(0, 1_000_000),
      low: maybe(number(0, 1_000_000)),
      high: maybe(number(0, 1_000_000)),
      reach: maybe(text(60)),
      insert: maybe(thingName),
      /** What was seen there when the line was made, in words. */
      condition: maybe(text(1000)),
      photo: maybe(thingName),
      /** Inserts that sit in the zone. */
      inserts: maybe(listOf(thingName, 0, 60)),
      note,
    }),
    0,
    300,
  ),
  note,
});

export const bidBody = z.looseObject({
  sculpture: thingName,
  campaign: thingName,
  who: text(200),
  date: day,
  validUntil: maybe(day),
  /** One currency for the whole bid. */
  currency: text(3, 3),
  /** Price of each line in minor units; `measured` is the area the bidder found on site, m2. */
  lines: listOf(z.looseObject({ item: text(40, 1), minor: z.int(), measured: maybe(positive(100000)) }), 0, 300),
  visited: maybe(day),
  named: maybe(listOf(personInRole, 0, 40)),
  withdrawn: maybe(day),
  note,
});

/** What is there of a paper that must hold certain things. */
export const completenessBody = z.looseObject({
  sculpture: thingName,
  campaign: thingName,
  of: z.enum(['request', 'proposal', 'report']),
  /** Whose paper it is; none for our own request. */
  bid: maybe(thingName),
  from: maybe(text(200)),
  /** Codes of trade/completeness. */
  items: listOf(
    z.looseObject({ id: text(60, 1), state: z.enum(['there', 'missing', 'not asked']), where: maybe(text(300)) }),
    0,
    100,
  ),
  date: day,
  letterSent: maybe(day),
  note,
});

/** A sample area, a method or a handover put to those who must say yes. */
export const approvalBody = z.looseObject({
  sculpture: thingName,
  campaign: maybe(thingName),
  of: z.enum(['sample area', 'colour', 'method', 'insert protection', 'handover']),
  zone: maybe(thingName),
  m2: maybe(positive(1000)),
  date: day,
  answer: z.enum(['yes', 'no', 'with changes', 'open']),
  words: text(2000),
  photos: maybe(z.array(thingName)),
  signed: listOf(z.looseObject({ role: text(100), name: maybe(text(200)), on: day }), 0, 20),
  note,
});

/** The colour that was agreed, frozen: four photos, the panel, the words, who signed. */
export const colourCardBody = z.looseObject({
  sculpture: thingName,
  campaign: maybe(thingName),
  zones: z.array(thingName),
  date: day,
  words: text(2000),
  dryShade: maybe(thingName),
  drySun: maybe(thingName),
  wetShade: maybe(thingName),
  wetSun: maybe(thingName),
  panel: maybe(text(200)),
  kept: maybe(text(300)),
  agreedColour: maybe(thingName),
  signed: listOf(z.looseObject({ role: text(100), name: maybe(text(200)), on: day }), 0, 20),
  note,
});

/** One layer of colour, as laid. */
export const layerBody = z.looseObject({
  sculpture: thingName,
  campaign: thingName,
  zone: thingName,
  /** Of the zone, from 1. */
  order: whole(1, 200),
  date: day,
  time: maybe(clockTime),
  /** As the maker said it. */
  solution: text(300),
  strength: maybe(text(100)),
  tool: maybe(text(100)),
  /** Of the metal, degrees Celsius. */
  surface: maybe(number(-50, 1200)),
  passes: maybe(whole(1, 1000)),
  rinsed: maybe(z.boolean()),
  air: maybe(text(300)),
  by: maybe(text(200)),
  /** Taken over from the layer of another zone. */
  sameAs: maybe(thingName),
  photos: maybe(z.array(thingName)),
  note,
});

/** A day of work with flame or hot metal. A record and a reminder, no safety device. */
export const hotDayBody = z.looseObject({
  sculpture: thingName,
  campaign: maybe(thingName),
  date: day,
  permit: text(200),
  authorisedBy: personInRole,
  /** Metres kept clear all round. */
  clearZone: number(0, 1000),
  /** Codes of trade/hotWork that were looked at and stand. */
  checked: listOf(text(60), 0, 40),
  watcher: maybe(personInRole),
  /** Minutes the fire authority and the insurer ask for. */
  watchMinutes: whole(0, 1440),
  workEnded: maybe(instant),
  /** When the work last went on after its end had been said: what was photographed before it was not after the heat. */
  wentOn: maybe(instant),
  /** The watcher's word that the watch was kept to its end, and when. */
  watchKept: maybe(
    z.looseObject({
      at: instant,
      by: text(200),
      seen: maybe(text(500)),
      /** Minutes a tablet counted to the end. */
      counted: maybe(number(0, 10000)),
      /** By the watcher's own watch, where the tablet slept or its clock was changed. */
      own: maybe(z.looseObject({ from: clockTime, until: clockTime })),
    }),
  ),
  /** Inserts near the heat that day. */
  inserts: maybe(listOf(thingName, 0, 200)),
  closed: maybe(z.looseObject({ at: instant, by: text(200) })),
  note,
});

/** What an insert bears, by the word of a named expert, and how it is kept from heat. */
export const insertCareBody = z.looseObject({
  sculpture: thingName,
  insert: thingName,
  bedding: maybe(text(100)),
  fixings: maybe(text(300)),
  condition: maybe(text(2000)),
  photos: maybe(z.array(thingName)),
  spare: maybe(z.boolean()),
  /** Degrees Celsius, and kelvin between two sides or in a minute. */
  most: maybe(number(-50, 1200)),
  mostDifference: maybe(number(0, 1200)),
  mostPerMinute: maybe(number(0, 1200)),
  limitBy: maybe(personInRole),
  limitDate: maybe(day),
  method: maybe(z.enum(['remove', 'shield', 'keep heat away', 'put off'])),
  shield: maybe(text(1000)),
  watcher: maybe(text(200)),
  takenOut: maybe(day),
  putBack: maybe(day),
  note,
});

export const insertReadingBody = z.looseObject({
  sculpture: thingName,
  insert: thingName,
  hotDay: thingName,
  time: clockTime,
  /** Where on the insert the sensor sat. */
  spot: text(100),
  celsius: number(-60, 1200),
  by: text(200),
});

/** An insert after the heat: seen, with a photo. */
export const insertAfterBody = z.looseObject({
  sculpture: thingName,
  insert: thingName,
  hotDay: thingName,
  state: z.enum(['unchanged', 'changed']),
  photos: listOf(thingName, 1, 20),
  by: text(200),
  at: instant,
  note,
});

/** How a work is reached and what stands in the way. */
export const accessSheetBody = z.looseObject({
  sculpture: thingName,
  /** Metres. */
  height: maybe(positive(100)),
  plinth: maybe(number(0, 100)),
  /** Code of trade/reaches. */
  equipment: maybe(text(60)),
  outreach: maybe(number(0, 100)),
  ground: maybe(text(500)),
  bears: maybe(z.enum(['yes', 'no', 'not known'])),
  waterDepth: maybe(number(0, 100)),
  closures: maybe(text(1000)),
  power: maybe(text(500)),
  water: maybe(text(500)),
  permits: maybe(text(1000)),
  competent: maybe(personInRole),
  /** Whole days asked for, and what a day costs. */
  days: maybe(number(0, 1000)),
  dayCost: maybe(moneySchema),
  rescue: maybe(text(1000)),
  note,
});
