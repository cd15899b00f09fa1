import { amountsRefused, mixed } from '../money';
import type { Reason } from '../record';
import type { Fund, Gift } from './pipeline';
import { because } from './reasonCodes';

const empty = (text: string): boolean => text.trim() === '';

/** What stands against a fund before it is kept. `currency` is the collection's, where it has one. */
export const fundRefused = (body: Fund, currency: string | undefined, today: string): Reason | undefined => {
  const { title, lines, yearly, upkeep, priced, wanted } = body;
  if (empty(title)) return because('fund: title missing');
  if (lines.some(({ name }) => empty(name))) return because('fund: line without a name');
  const twice = lines.find(({ id }, place) => lines.findIndex((line) => line.id === id) < place);
  if (twice) return because('fund: line twice', { name: twice.name });
  if (priced > today) return because('fund: day of prices to come', { day: priced });
  if (wanted !== undefined && wanted < priced) return because('fund: wanted before priced', { wanted, priced });
  const amounts = [...lines.map(({ amount }) => amount), yearly, upkeep].filter((amount) => amount !== undefined);
  return amountsRefused(amounts) ?? mixed([...(currency ? [{ minor: 0, currency }] : []), ...amounts]);
};

/** What stands against a gift. `fund` is the one it is for, `currency` the collection's, where it has one. */
export const giftRefused = (
  body: Gift,
  fund: Fund | undefined,
  currency: string | undefined,
  today: string,
): Reason | undefined => {
  const { who, amount, state, chance, received, only } = body;
  if (empty(who)) return because('fund: nobody named');
  const there = [...(currency ? [{ minor: 0, currency }] : []), ...(fund?.lines.map((line) => line.amount) ?? [])];
  const wrong = amountsRefused([amount]) ?? mixed([...there, amount]);
  if (wrong) return wrong;
  if (amount.minor === 0) return because('fund: nothing given');
  if (state === 'hoped' && chance === undefined) return because('fund: chance missing');
  if (received !== undefined && received > today) return because('fund: came before it was here', { day: received });
  if (state === 'in hand' && received === undefined) return because('fund: day it came missing');
  if (received !== undefined && (state === 'hoped' || state === 'pledged'))
    return because('fund: not yet come', { state });
  const known = new Set(fund?.lines.map(({ id }) => id));
  return fund && only?.some((id) => !known.has(id)) ? because('fund: line not known') : undefined;
};
