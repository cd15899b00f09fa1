import { type BodyOf, daysBetween, type Reason } from '../record';
import { alarmRules } from '../trade';
import { because } from './reasonCodes';

/** What stands against keeping a body, or nothing. */

/** The end of the work belongs to the day of the card or to the night after it; two times of a watch are two. */
export const hotDayRefused = ({ date, workEnded, watchKept }: BodyOf<'hotDay'>): Reason | undefined => {
  if (workEnded) {
    const days = daysBetween(date, workEnded.slice(0, 10));
    if (days < 0 || days > 1) return because('heat: not of this day');
  }
  if (watchKept && !workEnded) return because('heat: work not ended');
  if (watchKept && watchKept.by.trim() === '') return because('heat: signed by nobody');
  return watchKept?.own && watchKept.own.from === watchKept.own.until ? because('heat: a watch of no time') : undefined;
};

/** A limit is somebody's, and of a day. */
export const insertCareRefused = (body: BodyOf<'insertCare'>): Reason | undefined => {
  const { most, mostDifference, mostPerMinute, limitBy, limitDate, takenOut, putBack } = body;
  const limited = [most, mostDifference, mostPerMinute].some((limit) => limit !== undefined);
  if (limited && (!limitBy?.role.trim() || !limitDate)) return because('heat: limit by nobody');
  if (most !== undefined && most < alarmRules.leastLimit) return because('heat: limit under the air');
  return putBack && (!takenOut || putBack < takenOut) ? because('heat: days not in order') : undefined;
};

export const signedRefused = ({ by }: { readonly by: string }): Reason | undefined =>
  by.trim() === '' ? because('heat: signed by nobody') : undefined;

export const layerRefused = ({ solution }: BodyOf<'layer'>): Reason | undefined =>
  solution.trim() === '' ? because('heat: no solution') : undefined;
