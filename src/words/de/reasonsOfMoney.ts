import type { reasonsOfMoney as english } from '../en/reasonsOfMoney';
import { currency } from '../format';
import type { Same } from '../tongue';

/** Why an amount is not taken. */
export const reasonsOfMoney: Same<typeof english> = {
  'money: no amount': () => 'Noch kein Betrag: Geben Sie eine Zahl an.',
  'money: not an amount': (s) => `„${s.text('text')}“ ist kein Betrag. Schreiben Sie ihn wie 46 000 oder 46 000,50.`,
  'money: read two ways': (s) =>
    `„${s.text('text')}“ lässt sich auf zwei Weisen lesen. Trennen Sie Tausender mit einem Leerzeichen; sind die letzten drei Ziffern Teile einer Einheit, setzen Sie eine Null vor die Zahl.`,
  'money: below nothing': () => 'Ein Betrag kann nicht unter null liegen.',
  'money: too large': (s) =>
    `Mehr als ${currency(s.text('currency'))} ${s.number('most')} in einem Betrag ist sicher ein Tippfehler.`,
  'money: too many places': (s) =>
    `„${s.text('text')}“ hat mehr Nachkommastellen als ${currency(s.text('currency'))}: ${s.number('places')}.`,
  'money: not a currency': (s) =>
    s.text('text') === ''
      ? 'Nennen Sie zuerst die Währung: ihre drei Buchstaben, etwa EUR.'
      : `„${s.text('text')}“ ist keine Währung. Geben Sie die drei Großbuchstaben ihres Kürzels an, etwa EUR.`,
  'money: currencies mixed': (s) =>
    `${currency(s.text('one'))} und ${currency(s.text('other'))} werden nicht addiert. Geben Sie hier alle Beträge in einer Währung an.`,
};
