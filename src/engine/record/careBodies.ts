import { listOf, maybe, note, number, pattern, positive, text, whole } from './bounds';
import { day, thingName } from './entry';
import { moneySchema, personInRole } from './moneyBody';
import { timeOfDay } from './timeOfDay';
import { z } from './zod';

/** Time of the day as the clock on the wall said, 24 hours. */
export const clockTime = pattern(timeOfDay);

/** Air and surface before washing or waxing, and what was said to it. Temperatures in degrees Celsius, humidity in percent. */
export const weatherBody = z.looseObject({
  sculpture: thingName,
  date: day,
  time: clockTime,
  before: z.enum(['wash', 'wax', 'other']),
  air: number(-60, 60),
  humidity: number(0, 100),
  surface: number(-60, 100),
  /** Hours since the last rain or wash, as far as known. */
  dryHours: maybe(number(0, 10000)),
  said: z.enum(['go', 'wait', 'not today']),
  /** Gone on with all the same. */
  overridden: maybe(z.looseObject({ by: text(200), why: text(1000) })),
  note,
});

/** What may and what may not be done to one work. */
export const methodSheetBody = z.looseObject({
  sculpture: thingName,
  /** Codes of trade/methods. */
  allowed: listOf(text(60), 0, 100),
  forbidden: listOf(text(60), 0, 100),
  /** In own words, one line each. */
  alsoForbidden: maybe(listOf(text(300), 0, 50)),
  setBy: maybe(text(200)),
  date: maybe(day),
  note,
});

/** A tin or bottle in the store. */
export const productBody = z.looseObject({
  name: text(300),
  /** Code of trade/products. */
  sort: text(60),
  solvent: maybe(text(200)),
  additives: maybe(text(300)),
  batch: maybe(text(100)),
  opened: maybe(day),
  expires: maybe(day),
  /** Where the safety sheet is kept, and of what date it is. */
  sheet: maybe(text(500)),
  sheetDate: maybe(day),
  /** What is left, and how it is counted. */
  left: maybe(number(0, 1_000_000)),
  unit: maybe(z.enum(['g', 'kg', 'ml', 'l', 'tin', 'piece'])),
  /** Day on which that was counted: what is used after it is taken off. */
  counted: maybe(day),
  /** Uses of that day that were in the logbook when it was counted: what is written for that day later is taken off. */
  countedWith: maybe(listOf(thingName, 0, 200)),
  /** What one tin or piece holds, grams. */
  gramsPerUnit: maybe(positive(1_000_000)),
  /** Below this it is time to order. */
  least: maybe(number(0, 1_000_000)),
  /** Temperature of the surface its sheet asks for, degrees Celsius. */
  surfaceFrom: maybe(number(-50, 100)),
  surfaceTo: maybe(number(-50, 100)),
  /** No longer used. */
  ended: maybe(day),
  note,
});

/** Something that happened, at any time: storm, vandalism, a blow. */
export const incidentBody = z.looseObject({
  sculpture: maybe(thingName),
  date: day,
  time: maybe(clockTime),
  /** Code of trade/incidents. */
  sort: text(60),
  what: text(4000),
  zones: maybe(z.array(thingName)),
  /** People hurt or in danger: told first. */
  danger: z.enum(['none', 'possible', 'yes']),
  done: maybe(text(2000)),
  told: maybe(listOf(personInRole, 0, 20)),
  photos: maybe(z.array(thingName)),
  closed: maybe(z.looseObject({ on: day, note: maybe(text(2000)) })),
  note,
});

/** A move or a loan. */
export const moveBody = z.looseObject({
  sculpture: thingName,
  sort: z.enum(['move', 'loan out', 'loan in']),
  from: text(300),
  to: text(300),
  left: day,
  backDue: maybe(day),
  back: maybe(day),
  who: maybe(text(300)),
  /** How it was packed, lifted, held. */
  how: maybe(text(2000)),
  insurance: maybe(text(500)),
  photos: maybe(z.array(thingName)),
  note,
});

/** What was agreed with those who keep the grounds. */
export const groundsAgreementBody = z.looseObject({
  who: personInRole,
  /** Code of trade/grounds. */
  topic: text(60),
  text: text(2000),
  works: maybe(listOf(thingName, 0, 200)),
  agreed: day,
  review: maybe(day),
  ended: maybe(day),
  note,
});

/** Which works get what in a year. */
export const yearPlanBody = z.looseObject({
  year: whole(1900, 2200),
  works: listOf(
    z.looseObject({
      work: thingName,
      survey: z.enum(['full', 'look', 'none']),
      waxes: whole(0, 2),
      /** Planned day of the round. */
      day: maybe(day),
      lift: maybe(z.literal(true)),
    }),
    0,
    500,
  ),
  liftDays: maybe(listOf(z.looseObject({ day, cost: maybe(moneySchema), note }), 0, 100)),
  /** What there is to spend in the year. */
  budget: maybe(moneySchema),
  /** What a square metre costs by kind of work, codes of trade/treatments. */
  prices: maybe(
    listOf(z.looseObject({ type: text(60), each: moneySchema, per: z.enum(['m2', 'zone', 'work']) }), 0, 40),
  ),
  helpers: maybe(text(500)),
  /** Whom to call, for the helper's page. */
  contacts: maybe(text(1000)),
  note,
});

/** Where the works stand on a plan of the garden: shares of the picture's width and height. */
export const sitePlanBody = z.looseObject({
  photo: maybe(thingName),
  /** Metres that the width of the plan stands for. */
  metresWide: maybe(positive(100000)),
  spots: listOf(z.looseObject({ work: thingName, x: number(0, 1), y: number(0, 1) }), 0, 500),
  start: maybe(z.looseObject({ x: number(0, 1), y: number(0, 1), words: maybe(text(200)) })),
  note,
});

/** What was decided for a work at the end of a year, by whom. */
export const yearVerdictBody = z.looseObject({
  sculpture: thingName,
  year: whole(1900, 2200),
  verdict: z.enum(['hold', 'watch', 'treat locally', 'ask a conservator', 'campaign']),
  why: text(4000),
  by: text(200),
  date: day,
});

/** Ticks of a list: packing, the winter close-down. */
export const listTicksBody = z.looseObject({
  list: z.enum(['packing', 'close-down']),
  /** Day of packing, or the year. */
  of: text(20),
  ticked: listOf(z.looseObject({ item: text(120), on: day }), 0, 300),
  own: maybe(listOf(text(200), 0, 100)),
});

/** Something to be done, said by hand. */
export const taskBody = z.looseObject({
  sculpture: maybe(thingName),
  zone: maybe(thingName),
  what: text(500),
  from: day,
  until: maybe(day),
  /** Every so many months again. */
  every: maybe(whole(1, 600)),
  done: maybe(z.looseObject({ on: day, note: maybe(text(2000)) })),
  note,
});

/** A due thing the app worked out, and that was answered. `key` names it as engine/watch does. */
export const dueAnsweredBody = z.looseObject({
  sculpture: maybe(thingName),
  key: text(300),
  on: day,
  answer: z.enum(['done', 'not needed', 'later']),
  until: maybe(day),
  note,
});
