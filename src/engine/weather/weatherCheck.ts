import type { BodyOf, Reason } from '../record';
import { because } from './reasonCodes';

/** What stands against keeping a reading, or nothing. */
export const weatherAgainst = (body: BodyOf<'weather'>, today: string): Reason | undefined => {
  if (!(body.humidity > 0 && body.humidity <= 100)) return because('weather: humidity not possible', {});
  if (body.date > today) return because('weather: after today', { day: body.date });
  const { overridden } = body;
  if (overridden && !(overridden.by.trim() && overridden.why.trim()))
    return because('weather: gone on without a word', {});
  return undefined;
};
