import { amountsRefused } from '../money';
import type { BodyOf, Reason } from '../record';
import { because } from './reasonCodes';

/** The second day may not come before the first; a day that is not there stands against nothing. */
const outOfOrder = (first: string | undefined, second: string | undefined): Reason | undefined =>
  first !== undefined && second !== undefined && second < first
    ? because('year: dates out of order', { first, second })
    : undefined;

const empty = (text: string | undefined): boolean => text === undefined || text.trim() === '';

/** What stands against each kind before it is kept, or nothing. */
export const incidentRefused = (body: BodyOf<'incident'>): Reason | undefined =>
  empty(body.what) ? because('year: text missing') : outOfOrder(body.date, body.closed?.on);

export const moveRefused = (body: BodyOf<'move'>): Reason | undefined =>
  empty(body.to)
    ? because('year: text missing')
    : (outOfOrder(body.left, body.back) ?? outOfOrder(body.left, body.backDue));

export const agreementRefused = (body: BodyOf<'groundsAgreement'>): Reason | undefined =>
  empty(body.text)
    ? because('year: text missing')
    : empty(body.who.role) && empty(body.who.name)
      ? because('year: name missing')
      : (outOfOrder(body.agreed, body.review) ?? outOfOrder(body.agreed, body.ended));

export const yearPlanRefused = (body: BodyOf<'yearPlan'>): Reason | undefined => {
  const works = body.works.map(({ work }) => work);
  const days = [...body.works.map(({ day }) => day), ...(body.liftDays ?? []).map(({ day }) => day)];
  const outside = days.find((day) => day !== undefined && !day.startsWith(`${body.year}-`));
  const amounts = [
    ...(body.liftDays ?? []).map(({ cost }) => cost),
    body.budget,
    ...(body.prices ?? []).map(({ each }) => each),
  ];
  if (outside !== undefined) return because('year: day outside the year', { day: outside, year: body.year });
  if (new Set(works).size < works.length) return because('year: work twice');
  return amountsRefused(amounts.filter((amount) => amount !== undefined));
};

export const sitePlanRefused = (body: BodyOf<'sitePlan'>): Reason | undefined =>
  new Set(body.spots.map(({ work }) => work)).size < body.spots.length ? because('year: work twice') : undefined;

export const yearVerdictRefused = (body: BodyOf<'yearVerdict'>): Reason | undefined =>
  empty(body.by) ? because('year: name missing') : empty(body.why) ? because('year: text missing') : undefined;
