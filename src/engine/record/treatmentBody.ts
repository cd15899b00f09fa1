import { listOf, maybe, note, number, text, whole } from './bounds';
import { day, thingName } from './entry';
import { moneySchema } from './moneyBody';
import { z } from './zod';

/** A date as vague as it is known: 2019, 2019-05, 2019-05-12, or words such as "before 2021". */
export const vagueDate = text(60);

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
  batch: maybe(text(100)),
  /** The tin of the store it came from, and how much of it, in the tin's own unit. */
  stock: maybe(thingName),
  used: maybe(number(0, 1_000_000)),
  people: maybe(
    listOf(z.looseObject({ role: text(100), name: maybe(text(200)), hours: maybe(number(0, 10000)) }), 0, 50),
  ),
  /** The reading of air and surface it was done on. */
  weather: maybe(thingName),
  /** Last day of a work of several days. */
  ended: maybe(day),
  cost: maybe(moneySchema),
  campaign: maybe(thingName),
  /** Metal or layers taken away for good, m2. */
  takenAway: maybe(number(0, 100000)),
  /** What was not reached or not done. */
  left: maybe(text(1000)),
  photosBefore: maybe(z.array(thingName)),
  photosAfter: maybe(z.array(thingName)),
  note,
});
