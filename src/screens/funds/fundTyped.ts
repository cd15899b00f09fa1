import type { Fund } from '../../engine/fund';
import { isMoney, type Money, readMoney } from '../../engine/money';
import { sayReason, w } from '../../words';
import type { LineTyped } from './LinesEntry';

interface LineFault {
  readonly name?: string | undefined;
  readonly amount?: string | undefined;
}

/** The costs as typed: read, or what is wrong in each. A row left quite empty is no row. */
export const readLines = (
  typed: readonly LineTyped[],
  currency: string,
): { readonly lines: Fund['lines'] } | { readonly faults: Readonly<Record<string, LineFault>> } => {
  const faults: Record<string, LineFault> = {};
  const lines: Fund['lines'] = [];
  for (const { id, name, amount } of typed) {
    if (!name.trim() && !amount.trim()) continue;
    const read = readMoney(amount, currency);
    if (name.trim() && isMoney(read)) lines.push({ id, name: name.trim(), amount: read });
    else
      faults[id] = {
        name: name.trim() ? undefined : w.funds.sheet.lineMissing,
        amount: isMoney(read) ? undefined : sayReason(read),
      };
  }
  return Object.keys(faults).length > 0 ? { faults } : { lines };
};

/** An amount that may be left out; what is wrong with it as a sentence. */
export const amountOrNone = (typed: string, currency: string): Money | undefined | string => {
  if (!typed.trim()) return undefined;
  const read = readMoney(typed, currency);
  return isMoney(read) ? read : sayReason(read);
};
