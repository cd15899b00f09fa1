import { fraction, listOf, maybe, note, number, pattern, text, whole } from './bounds';
import { day, thingName } from './entry';
import { moneySchema, personInRole } from './moneyBody';
import { z } from './zod';

/** How money is reckoned in this collection. Rates are shares a year: 0.03 is three per cent. */
export const moneyRulesBody = z.looseObject({
  version: whole(1),
  currency: pattern(/^[A-Z]{3}$/),
  /** Real rate of discount. */
  rate: number(0, 0.3),
  /** Yearly rise of prices. */
  growth: number(-0.1, 0.3),
  contingency: number(0, 1),
  years: whole(1, 100),
  /** Share of an endowment that may be spent in a year. */
  spending: number(0.001, 0.2),
});

/** One cost of an option. */
export const optionCost = z.looseObject({
  name: text(200),
  amount: moneySchema,
  /** First year in which it falls, 0 this year. */
  first: whole(0, 100),
  /** Every so many years again; once where not given. */
  every: maybe(whole(1, 100)),
  last: maybe(whole(0, 100)),
  /** Yearly rise of its own, instead of the collection's. */
  growth: maybe(number(-0.1, 0.3)),
  /** The collection's contingency comes on top. */
  contingency: maybe(z.literal(true)),
  price: z.enum(['quote', 'estimate', 'made up']),
});

/** One way to go on with a work. */
export const optionBody = z.looseObject({
  sculpture: thingName,
  /** Code of trade/options. */
  sort: text(60),
  title: text(200),
  zones: maybe(z.array(thingName)),
  costs: listOf(optionCost, 0, 60),
  /** Months of a year in which the worst zone in public view stays under the level of return; 0 to 12. */
  goodMonths: maybe(
    z.looseObject({
      value: number(0, 12),
      low: number(0, 12),
      high: number(0, 12),
      from: z.enum(['own holds', 'published', 'said']),
    }),
  ),
  /** Steps that cannot be taken back within the years looked at. */
  irreversible: whole(0, 1000),
  irreversibleSize: maybe(z.enum(['small', 'large'])),
  does: maybe(text(1000)),
  risks: maybe(text(2000)),
  who: maybe(text(500)),
  note,
});

/** A price somebody gave. */
export const quoteBody = z.looseObject({
  sculpture: maybe(thingName),
  option: maybe(thingName),
  who: text(200),
  what: text(500),
  amount: moneySchema,
  state: z.enum(['estimate', 'quote', 'actual']),
  date: day,
  validUntil: maybe(day),
  /** The one that takes this one's place. */
  renewedBy: maybe(thingName),
  note,
});

/** Money gathered for something. */
export const fundBody = z.looseObject({
  title: text(200),
  sculpture: maybe(thingName),
  /** What it must pay for, at today's prices. */
  lines: listOf(
    z.looseObject({ id: text(40, 1), name: text(200), amount: moneySchema, contingency: maybe(z.literal(true)) }),
    0,
    60,
  ),
  /** Day of the prices. */
  priced: day,
  wanted: maybe(day),
  /** What comes in a year without being asked for. */
  yearly: maybe(moneySchema),
  /** Yearly upkeep an endowment is to carry. */
  upkeep: maybe(moneySchema),
  promise: maybe(text(2000)),
  closed: maybe(day),
  note,
});

export const giftBody = z.looseObject({
  sculpture: maybe(thingName),
  fund: thingName,
  who: text(200),
  amount: moneySchema,
  state: z.enum(['in hand', 'pledged', 'hoped', 'spent', 'lost']),
  /** Chance that a hoped one comes, 0 to 1. */
  chance: maybe(fraction),
  expected: maybe(day),
  received: maybe(day),
  /** Lines of the fund it may pay; all where not given. */
  only: maybe(listOf(text(40, 1), 0, 60)),
  inKind: maybe(z.literal(true)),
  note,
});

/** Something that would change our mind, watched by the app. */
export const tripwire = z.looseObject({
  id: text(40, 1),
  /** Code of engine/watch. */
  sort: text(60),
  zone: maybe(thingName),
  /** The number it is about, in the unit of its sort. */
  level: maybe(number(-1_000_000, 1_000_000)),
  /** How many times in a row, where the sort asks for it. */
  times: maybe(whole(1, 20)),
  by: maybe(day),
  words: maybe(text(500)),
});

export const decisionBody = z.looseObject({
  sculpture: maybe(thingName),
  date: day,
  title: text(300),
  /** An option, or only words. */
  option: maybe(thingName),
  chosen: text(2000),
  refused: listOf(z.looseObject({ option: maybe(thingName), what: text(300), why: text(1000) }), 0, 20),
  evidence: listOf(text(500), 0, 40),
  consulted: listOf(personInRole, 0, 40),
  dissent: maybe(text(2000)),
  tripwires: listOf(tripwire, 0, 20),
  review: maybe(day),
  signed: listOf(z.looseObject({ role: text(100), name: maybe(text(200)), on: day }), 0, 20),
  /** The decision that took its place. */
  replacedBy: maybe(thingName),
  note,
});

/** A tripwire that went, and what was said to it. */
export const tripwireAnswerBody = z.looseObject({
  sculpture: maybe(thingName),
  decision: thingName,
  tripwire: text(40, 1),
  /** What had been seen, as worked out that day. */
  seen: text(500),
  on: day,
  answer: z.enum(['decide anew', 'keep to it', 'look again']),
  why: maybe(text(2000)),
  by: text(200),
});
