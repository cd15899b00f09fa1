import { listOf, maybe, note, text, whole } from './bounds';
import { day, thingName } from './entry';
import { z } from './zod';

/** What a paper may speak of that not every file may hold: it stays behind with what it speaks of. */
export const spokenOf = z.enum(['money', 'access']);

/** What a paper is made of: a thing, or a year of the collection. */
const ofPaper = {
  sculpture: maybe(thingName),
  /** Code of the sort of paper. */
  paper: text(60, 1),
  about: maybe(thingName),
  year: maybe(whole(1900, 2200)),
  /** The same for every text and copy of a paper, so that a whole line of replacement goes or stays. */
  speaksOf: maybe(listOf(spokenOf, 0, 4)),
};

/** Words somebody wrote for one place of a paper, as typed. An empty text says that there shall be none. */
export const paperTextBody = z.looseObject({
  ...ofPaper,
  /** Code of the place in the paper. */
  part: text(60, 1),
  text: text(20000),
  by: maybe(text(200)),
  date: day,
});

/** A paper that was given out. */
export const paperIssuedBody = z.looseObject({
  ...ofPaper,
  title: text(300, 1),
  date: day,
  by: text(200),
  status: z.enum(['draft', 'final']),
  to: maybe(text(300)),
  /** Names the state of the record it was made from, as at the foot of its pages. */
  state: text(120),
  note,
});

/** Where something that is no record is kept: a key, a panel with the agreed colour, a sample. */
export const keptWhereBody = z.looseObject({
  sculpture: maybe(thingName),
  /** Code of trade/keptThings. */
  sort: text(60, 1),
  what: maybe(text(300)),
  where: text(1000, 1),
  /** Who has it or knows of it. */
  who: maybe(text(300)),
  /** Day on which somebody saw it there. */
  found: maybe(day),
  note,
});
