import type { Desk } from './desk';
import { thingsWithin } from './theThing';

/** The day of the last round in which the zone has a visit; undefined where nobody has been there yet. */
export const lastVisitDay = async (desk: Desk, sculpture: string, zone: string): Promise<string | undefined> => {
  const visits = (await thingsWithin(desk, 'visit', sculpture)).filter((v) => v.body.zone === zone);
  if (visits.length === 0) return undefined;
  const days = new Map((await thingsWithin(desk, 'round', sculpture)).map((r) => [r.thing, r.body.date]));
  return visits
    .map((v) => days.get(v.body.round) ?? '')
    .sort()
    .at(-1);
};
