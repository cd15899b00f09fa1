import { idPart } from '../../engine/record';
import { type CalendarDay, calendarFile } from '../../engine/watch';
import type { Desk } from '../desk';
import { type Prepared, preparedName } from './prepareSurvey';

/** Nothing of it is the survey: it is told to no backup (see leftWith). */
const calendarMime = 'text/calendar';

/** The days as a calendar file (RFC 5545), ready to be saved as any other file. `alarmDays` before each day it rings. */
export const prepareCalendar = (
  desk: Desk,
  days: readonly CalendarDay[],
  { name, alarmDays }: { readonly name: string; readonly alarmDays?: number | undefined },
): Prepared => {
  const text = calendarFile(days, { made: desk.now(), name, of: idPart(desk.collection), alarmDays });
  return {
    name: preparedName(desk, 'ics'),
    mime: calendarMime,
    bytes: new TextEncoder().encode(text),
    entries: days.length,
    holds: [],
    photosStay: 0,
    keptAtHome: 0,
    made: desk.store.made,
  };
};
