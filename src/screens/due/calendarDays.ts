import type { DueThings } from '../../actions';
import type { CalendarDay } from '../../engine/watch';
import { date, type NameOfThing, w } from '../../words';
import { dueSentences, dueTitle, zonesText } from './dueText';

/** What is due as days of a calendar. A calendar shows nothing that is past: what is, stands on today. */
export const calendarDays = ({ due, zones }: DueThings, names: NameOfThing, today: string): readonly CalendarDay[] =>
  due.map((one) => {
    const work = one.sculpture ? names(one.sculpture) : undefined;
    const where = zonesText(one, zones);
    const past = one.day < today ? [`${w.due.when.over}: ${date(one.day)}.`] : [];
    return {
      uid: one.key,
      day: one.day < today ? today : one.day,
      summary: [dueTitle(one), work].filter(Boolean).join(' · '),
      description: [...past, ...(where ? [`${where}.`] : []), ...dueSentences(one, names)].join('\n'),
      category: w.due.sort[one.sort],
    };
  });
