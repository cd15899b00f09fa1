import { daysBetween, type Thing } from '../record';
import { type Due, dueSorts } from './due';
import { because } from './reasonCodes';
import type { TripwireStanding } from './standing';
import { watchNumbers } from './watchNumbers';

/** 'over': its day is past, or it is a danger. 'now': it may be done today. 'later': its time has not come. */
export type DueWhen = 'over' | 'now' | 'soon' | 'later';

export interface DueStanding extends Due {
  readonly when: DueWhen;
  /** The day somebody put it off to; null where nobody did. */
  readonly putOff: string | null;
}

export interface AllDue {
  /** Dangers first, then by day. */
  readonly due: readonly DueStanding[];
  /** What was answered and would else stand here, with the answer. */
  readonly answered: readonly { readonly due: Due; readonly answer: Thing<'dueAnswered'> }[];
}

const whenOf = ({ sort, day, from }: Due, today: string): DueWhen => {
  if (sort === 'danger' || day < today) return 'over';
  if (from <= today || day === today) return 'now';
  return daysBetween(today, day) <= watchNumbers.soon.value ? 'soon' : 'later';
};

const place = ({ sort, day }: Due): string => `${sort === 'danger' ? '0' : '1'} ${day}`;
const inOrder = (a: Due, b: Due): number =>
  place(a) < place(b)
    ? -1
    : place(a) > place(b)
      ? 1
      : dueSorts.indexOf(a.sort) - dueSorts.indexOf(b.sort) || (a.key < b.key ? -1 : a.key > b.key ? 1 : 0);

/** A tripwire that went is due from the day of what was seen. */
export const dueOfTripwires = (standing: readonly TripwireStanding[]): readonly Due[] =>
  standing
    .filter(({ open, word }) => open && word === 'met')
    .map(({ decision: { thing, body }, tripwire, since, reasons }) => ({
      key: `tripwire/${thing}/${tripwire.id}/${since}`,
      sort: 'tripwire',
      sculpture: body.sculpture ?? null,
      zones: tripwire.zone ? [tripwire.zone] : [],
      about: thing,
      day: since ?? body.date,
      from: since ?? body.date,
      until: null,
      ownEnd: true,
      reasons: [because('due: tripwire', { title: body.title, date: since ?? '' }), ...reasons],
    }));

/**
 * Everything due, as it stands with what was answered: done and not needed are out of the list, later comes back on its day. A
 * danger to people is put off by nobody: it ends where it is closed.
 */
export const dueStanding = (all: readonly Due[], answers: readonly Thing<'dueAnswered'>[], today: string): AllDue => {
  const byKey = new Map(answers.map((answer) => [answer.body.key, answer]));
  const due: DueStanding[] = [];
  const answered: { due: Due; answer: Thing<'dueAnswered'> }[] = [];
  for (const one of all) {
    const answer = one.sort === 'danger' ? undefined : byKey.get(one.key);
    if (answer && answer.body.answer !== 'later') {
      answered.push({ due: one, answer });
      continue;
    }
    const until = answer?.body.until;
    // Put off past the last day it can be done would be the same as not doing it: it comes back on that day.
    const putOff = until !== undefined && until > one.day ? (one.until && until > one.until ? one.until : until) : null;
    const standing = putOff
      ? { ...one, day: putOff, from: putOff, reasons: [...one.reasons, because('due: put off', { date: putOff })] }
      : one;
    due.push({ ...standing, when: whenOf(standing, today), putOff });
  }
  return { due: due.sort(inOrder), answered: answered.sort((a, b) => inOrder(a.due, b.due)) };
};
