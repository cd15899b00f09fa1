import type { reasonsOfBudget as english } from '../en/reasonsOfBudget';
import type { Same } from '../tongue';

/** How a budget is shared out, and why a zone is left. */
export const reasonsOfBudget: Same<typeof english> = {
  'budget: how it is weighed': () =>
    'Der Abzug einer Zone ist ihre Fläche mal ihr Gewicht mal das, was ihrem Index zu 100 fehlt. Von allen Arten, die Summe auszugeben, gilt die, die am wenigsten übrig lässt; unter gleichen die billigste.',
  'budget: exact to': (s) =>
    `Jede Art wurde gegen jede andere abgewogen, in Schritten von ${s.measure('m2', 'area', 4)} Abzug: so genau ist es.`,
  'budget: range': () =>
    'Die Spanne ist die der Bedeckungen und Flächen. Innerhalb eines Werks gelten alle Fehler als gleich gerichtet, denn ein Auge sah sie in einem Licht.',
  'budget: not in it': () =>
    'Wie gut eine Arbeit gelingt, wie lange sie hält und das jährliche Wachs, das eine intakte Zone intakt hält, stecken nicht in dieser Rechnung. Wachsen nimmt nur den Abzug für abgetragenes Wachs weg.',
  'budget: stop word': () =>
    'Dort wurde ein Stoppbegriff gesehen. Fragen Sie den Restaurator, bevor irgendetwas getan wird.',
  'budget: no work for it': () => 'Keine Arbeit mit einem Preis nimmt weg, was dort übrig ist.',
  'budget: too little money': () => 'Die Summe reicht nicht.',
  'budget: no price': () => 'Geben Sie mindestens einen Preis an.',
};
