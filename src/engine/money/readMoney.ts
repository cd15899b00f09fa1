import { plainFigures } from '../numerals';
import type { Reason } from '../record';
import { amountRefused, type Money } from './amount';
import { isCurrency, placesOf, unitOf } from './currencies';
import { because } from './reasonCodes';
import { withoutCurrency } from './withoutCurrency';

/**
 * What a person typed for an amount: "46 000", "46,000.50", "46.000,50", "46'000", with its currency or without. The mark that comes last and once, with
 * no more figures after it than the currency has places, parts the cents; what could be read two ways is refused.
 */
export const readMoney = (text: string, currency: string): Money | Reason => {
  if (!isCurrency(currency)) return because('money: not a currency', { text: currency });
  const plain = withoutCurrency(plainFigures(text), currency).replace(/ ?-$/, '');
  // Spaces and apostrophes part thousands and nothing else: "12 50" is not twelve hundred and fifty.
  const bare = plain.replace(/^[1-9]\d{0,2}([ '])\d{3}(\1\d{3})*(?=[.,]\d|$)/, (thousands) =>
    thousands.replace(/\D/g, ''),
  );
  if (bare === '') return because('money: no amount');
  if (/^- ?\d/.test(bare)) return because('money: below nothing');
  if (!/^\d+([.,]\d+)*$/.test(bare)) return because('money: not an amount', { text });
  const cut = partedAt(bare, currency);
  if (cut === 'two ways') return because('money: read two ways', { text });
  const whole = cut === undefined ? bare : bare.slice(0, cut);
  const cents = cut === undefined ? '' : bare.slice(cut + 1);
  if (!/^\d{1,3}([.,])\d{3}(\1\d{3})*$|^\d+$/.test(whole)) return because('money: not an amount', { text });
  const places = placesOf(currency);
  if (cents.length > places) return because('money: too many places', { text, currency, places });
  const minor = Number(whole.replace(/[.,]/g, '')) * unitOf(currency) + Number(cents.padEnd(places, '0') || 0);
  const money = { minor, currency };
  return amountRefused(money) ?? money;
};

/** Where the whole ends and the cents begin, or undefined where there are none. */
const partedAt = (bare: string, currency: string): number | 'two ways' | undefined => {
  const last = Math.max(bare.lastIndexOf('.'), bare.lastIndexOf(','));
  if (last < 0) return undefined;
  const mark = bare.charAt(last);
  const marks = [...bare].filter((c) => c === '.' || c === ',');
  if (marks.length > 1) return marks.filter((c) => c === mark).length === 1 ? last : undefined;
  const after = bare.length - last - 1;
  // One mark with three figures after it parts thousands, unless this currency has three places.
  if (after !== 3 || last > 3 || bare.startsWith('0')) return last;
  return placesOf(currency) === 3 ? 'two ways' : undefined;
};
