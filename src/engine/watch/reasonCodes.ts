import type { Reason } from '../record';

/** Every reason this folder gives, with the parameters its sentence may use. The sentences live in src/words/. */
export const watchReasons = {
  // Where a tripwire stands.
  'tripwire: hold over': ['zone', 'level', 'first', 'last', 'date'],
  'tripwire: hold under': ['zone', 'level', 'first', 'last', 'date'],
  'tripwire: hold between': ['zone', 'level', 'first', 'last', 'date'],
  'tripwire: seasons seen': ['seen', 'times'],
  'tripwire: no holds known': ['zone'],
  'tripwire: green share': ['zone', 'share', 'low', 'high', 'level', 'date'],
  'tripwire: area': ['what', 'm2', 'low', 'high', 'level', 'date'],
  'tripwire: index': ['index', 'low', 'high', 'level', 'date'],
  'tripwire: zone not judged': ['zone', 'date'],
  'tripwire: not all seen': ['percent'],
  'tripwire: nobody looked': [],
  'tripwire: round before decision': ['date'],
  'tripwire: surely worse': ['zone', 'date'],
  'tripwire: not surely worse': ['date'],
  'tripwire: nothing to compare': ['date'],
  'tripwire: stop word': ['zone', 'kind', 'date'],
  'tripwire: no stop word': [],
  'tripwire: fund': ['sum', 'level', 'currency'],
  'tripwire: no fund': [],
  'tripwire: fund of several currencies': [],
  'tripwire: quote ended': ['who', 'date'],
  'tripwire: quotes stand': ['count'],
  'tripwire: no quote': [],
  'tripwire: day': ['date'],
  'tripwire: sort not known': ['sort'],
  // Why something is due, and what would be done by it.
  'due: danger': ['what', 'date'],
  'due: incident open': ['what', 'date'],
  'due: incident with danger': ['what', 'date'],
  'due: tripwire': ['title', 'date'],
  'due: look': ['count', 'date'],
  'due: wax': ['count', 'date'],
  'due: round': ['date'],
  'due: round, none yet': [],
  'due: round, as planned': ['year'],
  'due: watch': ['months', 'date'],
  'due: warranty': ['who', 'date', 'days'],
  'due: quote ends': ['who', 'what', 'date'],
  'due: quote ended': ['who', 'what', 'date'],
  'due: review': ['title', 'date'],
  'due: agreement': ['who', 'date'],
  'due: product': ['name', 'date'],
  'due: loan back': ['to', 'date'],
  'due: task': ['what'],
  'due: lift': ['date'],
  'due: gift': ['who', 'state', 'date'],
  'due: hot day open': ['date'],
  'due: put off': ['date'],
  // What came of a treatment.
  'held: still clear': ['last'],
  'held: back between': ['first', 'last'],
  'held: nobody looked since': ['date'],
  'held: before': ['first', 'last', 'date'],
  'held: nothing before': [],
  'held: no coating since': ['date'],
  'held: no clean start': ['date'],
  // What stands against a body.
  'watch: title missing': [],
  'watch: review before decision': ['date', 'review'],
  'watch: signed before decision': ['date', 'signed'],
  'watch: tripwire incomplete': ['sort', 'field'],
  'watch: tripwire level': ['least', 'most'],
  'watch: two tripwires of one name': [],
  'watch: replaced by itself': [],
  'watch: answer without name': [],
  'watch: put off without a day': [],
  'watch: put off to the past': ['date'],
  'watch: task ends before it begins': ['first', 'last'],
} as const satisfies Record<string, readonly string[]>;

export type WatchReason = keyof typeof watchReasons;

/** A reason of this folder, with exactly the parameters its code takes. */
export const because = <C extends WatchReason>(
  code: C,
  ...[params]: (typeof watchReasons)[C] extends readonly []
    ? []
    : [Record<(typeof watchReasons)[C][number], string | number>]
): Reason => ({ code, params: params ?? {} });
