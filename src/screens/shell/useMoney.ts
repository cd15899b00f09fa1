import { useState } from 'react';
import { type Outcome, plannedOfCollection, setPlanned } from '../../actions';
import { defaultMoneyRules, rulesOf } from '../../engine/money';
import { nameOf } from '../../engine/record';
import { useDesk } from './DeskContext';
import { useQuestion } from './useQuestion';

/**
 * How money is reckoned here, and the currency of what is typed: `<MoneyField currency={currency} onCurrency={onCurrency} …>`.
 * No currency is assumed; with the first amount it is asked for, and a form calls keepCurrency before it keeps its own.
 */
export function useMoney() {
  const desk = useDesk();
  const kept = useQuestion(plannedOfCollection(desk));
  const rules = rulesOf(kept?.moneyRules[0]?.body);
  const [typed, setTyped] = useState('');
  const keepCurrency = async (): Promise<Outcome> => {
    if (rules.set) return { ok: true };
    const body = { version: 1, currency: typed, ...defaultMoneyRules };
    return setPlanned(desk, 'moneyRules', nameOf.moneyRules(desk.collection), body);
  };
  return {
    rules,
    currency: rules.currency ?? typed,
    onCurrency: kept && !rules.set ? setTyped : undefined,
    keepCurrency,
  } as const;
}
