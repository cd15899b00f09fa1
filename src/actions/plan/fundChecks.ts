import { fundRefused, giftRefused } from '../../engine/fund';
import { type BodyOf, nameOf } from '../../engine/record';
import type { Desk } from '../desk';
import type { PlannedCheck } from './checks';

const leadOf = async <T>(desk: Desk, thing: string): Promise<T | undefined> => {
  const kept = await desk.store.current(thing);
  return kept && !kept.gone ? (kept.lead.body as T) : undefined;
};

/** A fund is in the collection's currency, and so are the gifts in it. */
export const fundCheck: PlannedCheck<'fund'> = async (body, desk) => {
  const rules = await leadOf<BodyOf<'moneyRules'>>(desk, nameOf.moneyRules(desk.collection));
  return fundRefused(body, rules?.currency, desk.today());
};

export const giftCheck: PlannedCheck<'gift'> = async (body, desk) => {
  const rules = await leadOf<BodyOf<'moneyRules'>>(desk, nameOf.moneyRules(desk.collection));
  return giftRefused(body, await leadOf<BodyOf<'fund'>>(desk, body.fund), rules?.currency, desk.today());
};
