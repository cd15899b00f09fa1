import type { Reason } from '../record';
import { yearNumbers } from './numbers';
import { because } from './reasonCodes';
import type { WorkTime } from './timeOf';

/**
 * Days of a plan that hold more hours of one person than a day has: by the rounds alone, or once it is washed and waxed the same
 * day. Of a work waxed twice a year one wax counts.
 */
export const overfullDays = (
  visits: readonly { readonly day: string | undefined; readonly waxes: number; readonly time: WorkTime }[],
): readonly Reason[] => {
  const days = [...new Set(visits.flatMap(({ day }) => day ?? []))].sort();
  const most = yearNumbers.dayOfWork.value;
  return days.flatMap((day) => {
    const here = visits.filter((visit) => visit.day === day);
    const hours = (minutes: number): number => minutes / yearNumbers.minutesInHour.value;
    const rounds = hours(here.reduce((sum, { time }) => sum + time.survey.value, 0));
    const all = rounds + hours(here.reduce((sum, { time, waxes }) => sum + time.wax.value / Math.max(1, waxes), 0));
    if (rounds > most) return [because('year: day too short for rounds', { day, hours: Math.ceil(rounds), most })];
    return all > most ? [because('year: day too short with waxing', { day, hours: Math.ceil(all), most })] : [];
  });
};
