import { listOf, maybe, note, number, text, whole } from './bounds';
import { day, thingName } from './entry';
import { personInRole } from './moneyBody';
import { z } from './zod';

/** What bids are judged by: code of trade/bidCriteria, or one of her own with its name; weights come to 100. */
const criteria = () =>
  listOf(z.looseObject({ id: text(60, 1), name: maybe(text(200)), weight: number(0, 100) }), 1, 20);

/** How the bids of a campaign are weighed, and by whom. */
export const bidCriteriaBody = z.looseObject({
  sculpture: thingName,
  campaign: thingName,
  date: day,
  criteria: criteria(),
  /** Who marks; each has a sheet of their own under this id. */
  scorers: listOf(z.looseObject({ id: text(60, 1), ...personInRole.shape }), 0, 20),
  /** Weights changed once bids were in: what they were, and how many bids and sheets handed in there were. */
  changed: maybe(
    listOf(z.looseObject({ on: day, why: text(1000), bids: whole(0), sheets: whole(0), before: criteria() }), 0, 50),
  ),
  /** The sheets were opened before all were handed in. */
  opened: maybe(z.looseObject({ on: day, by: text(200), why: maybe(text(1000)) })),
  note,
});

/** The marks of one scorer. */
export const bidScoreBody = z.looseObject({
  sculpture: thingName,
  campaign: thingName,
  /** Id of the scorer in the criteria. */
  scorer: text(60, 1),
  date: day,
  /** 0 to 10, a bid and criterion; the price has none, it follows from the bids. */
  marks: listOf(z.looseObject({ bid: thingName, criterion: text(60, 1), mark: whole(0, 10) }), 0, 1000),
  /** Said to be the scorer's own and final. */
  handedIn: maybe(day),
  note,
});
