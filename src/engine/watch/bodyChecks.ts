import type { BodyOf, Reason } from '../record';
import { because } from './reasonCodes';
import { tripwireSortOf } from './tripwireSorts';

/** What stands against a tripwire: a sort that needs a zone, a level or a day, without one. */
const tripwireRefused = (wire: BodyOf<'decision'>['tripwires'][number]): Reason | undefined => {
  const sort = tripwireSortOf(wire.sort);
  // A sort of a newer version is kept as it came.
  if (!sort) return undefined;
  const lacks = (field: string): Reason => because('watch: tripwire incomplete', { sort: sort.id, field });
  if (sort.zone === 'one' && !wire.zone) return lacks('zone');
  if (sort.day && !wire.by) return lacks('by');
  if (!sort.unit) return undefined;
  if (wire.level === undefined) return lacks('level');
  const { least = 0, most = Number.POSITIVE_INFINITY } = sort;
  return wire.level < least || wire.level > most ? because('watch: tripwire level', { least, most }) : undefined;
};

/** What stands against a decision: days out of order, a tripwire that could never be told. `thing` is its own name. */
export const decisionRefused = (body: BodyOf<'decision'>, thing: string): Reason | undefined => {
  const { title, date, review, signed, tripwires, replacedBy } = body;
  if (title.trim() === '') return because('watch: title missing');
  if (review !== undefined && review < date) return because('watch: review before decision', { date, review });
  const early = signed.find(({ on }) => on < date);
  if (early) return because('watch: signed before decision', { date, signed: early.on });
  if (replacedBy === thing) return because('watch: replaced by itself');
  if (new Set(tripwires.map(({ id }) => id)).size < tripwires.length)
    return because('watch: two tripwires of one name');
  return tripwires.map(tripwireRefused).find(Boolean);
};

/** An answer is somebody's. */
export const tripwireAnswerRefused = ({ by }: BodyOf<'tripwireAnswer'>): Reason | undefined =>
  by.trim() === '' ? because('watch: answer without name') : undefined;

/** "Later" says until when, and that is a day to come. */
export const dueAnswerRefused = ({ answer, on, until }: BodyOf<'dueAnswered'>): Reason | undefined => {
  if (answer !== 'later') return undefined;
  if (until === undefined) return because('watch: put off without a day');
  return until <= on ? because('watch: put off to the past', { date: until }) : undefined;
};

export const taskRefused = ({ what, from, until }: BodyOf<'task'>): Reason | undefined => {
  if (what.trim() === '') return because('watch: title missing');
  if (until !== undefined && until < from)
    return because('watch: task ends before it begins', { first: from, last: until });
  return undefined;
};
