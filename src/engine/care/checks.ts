import type { BodyOf, Reason } from '../record';
import { because } from './reasonCodes';

const isDay = (date: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(date);

/** What stands against keeping a product, or nothing. */
export const productAgainst = (body: BodyOf<'product'>, today: string): Reason | undefined => {
  const { opened, expires, ended, surfaceFrom: from, surfaceTo: to, counted } = body;
  if (!body.name.trim()) return because('care: product without a name');
  for (const last of [expires, ended])
    if (opened && last && last < opened) return because('care: days out of order', { first: opened, last });
  if (from !== undefined && to !== undefined && from >= to) return because('care: range upside down', { from, to });
  if ((body.left !== undefined || body.least !== undefined) && !body.unit) return because('care: unit missing');
  if (counted && counted > today) return because('care: counted after today', { day: counted });
  return undefined;
};

/** What stands against an entry of the logbook beyond its schema, or nothing. */
export const treatmentAgainst = (
  body: Pick<BodyOf<'treatment'>, 'date' | 'ended' | 'cost' | 'people'>,
): Reason | undefined => {
  const { date, ended, cost, people } = body;
  if (ended && !isDay(date)) return because('care: first day missing');
  if (ended && ended < date) return because('care: days out of order', { first: date, last: ended });
  if (cost && cost.minor < 0) return because('care: cost below nothing');
  if (people?.some(({ role }) => !role.trim())) return because('care: somebody without a role');
  return undefined;
};

/** What stands against a method sheet, or nothing. */
export const methodSheetAgainst = ({ allowed, forbidden }: BodyOf<'methodSheet'>): Reason | undefined => {
  const both = allowed.find((method) => forbidden.includes(method));
  return both === undefined ? undefined : because('care: allowed and forbidden', { method: both });
};
