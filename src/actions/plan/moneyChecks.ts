import { optionRefused, quoteRefused, rulesRefused } from '../../engine/options';
import { type BodyOf, nameOf } from '../../engine/record';
import type { Desk } from '../desk';
import { thingsOfKind } from '../theThing';
import type { PlannedCheck } from './checks';

/** The collection's currency, or undefined where none is set yet. */
const currencyHere = async (desk: Desk): Promise<string | undefined> => {
  const kept = await desk.store.current(nameOf.moneyRules(desk.collection));
  return kept && !kept.gone ? (kept.lead.body as unknown as BodyOf<'moneyRules'>).currency : undefined;
};

export const optionCheck: PlannedCheck<'option'> = async (body, desk) => optionRefused(body, await currencyHere(desk));

export const quoteCheck: PlannedCheck<'quote'> = (body, desk, thing) => quoteRefused(body, thing, desk.today());

/** Options and funds are in the collection's currency, and would be left in another. */
export const moneyRulesCheck: PlannedCheck<'moneyRules'> = async (body, desk) => {
  if ((await currencyHere(desk)) === body.currency) return undefined;
  const [options, gifts, funds] = await Promise.all([
    thingsOfKind(desk, 'option'),
    thingsOfKind(desk, 'gift'),
    thingsOfKind(desk, 'fund'),
  ]);
  const inUse = [
    ...options.flatMap(({ body: { costs } }) => costs[0]?.amount.currency ?? []),
    ...gifts.map(({ body: { amount } }) => amount.currency),
    ...funds.flatMap(({ body: { lines } }) => lines[0]?.amount.currency ?? []),
  ];
  return rulesRefused(body, inUse);
};
