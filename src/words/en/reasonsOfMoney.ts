import type { MoneyReason } from '../../engine/money';
import { currency } from '../format';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

/** Why an amount is not taken. */
export const reasonsOfMoney = spoken('reasonsOfMoney', 'reasonsOfMoney', {
  'money: no amount': () => 'No amount yet: give a number.',
  'money: not an amount': (s) => `“${s.text('text')}” is no amount. Write it like 46 000 or 46 000.50.`,
  'money: read two ways': (s) =>
    `“${s.text('text')}” can be read two ways. Write thousands with a space; where the last three figures are parts of a unit, put a nought before the number.`,
  'money: below nothing': () => 'An amount cannot be below nothing.',
  'money: too large': (s) =>
    `More than ${currency(s.text('currency'))} ${s.number('most')} in one amount is surely a slip of a key.`,
  'money: too many places': (s) =>
    `“${s.text('text')}” has more places than ${currency(s.text('currency'))} has: ${s.number('places')}.`,
  'money: not a currency': (s) =>
    s.text('text') === ''
      ? 'Say the currency first: its three letters, such as EUR.'
      : `“${s.text('text')}” is no currency. Give the three capital letters of its code, such as EUR.`,
  'money: currencies mixed': (s) =>
    `${currency(s.text('one'))} and ${currency(s.text('other'))} are not added. Give all amounts here in one currency.`,
} satisfies Sentences<MoneyReason>);
