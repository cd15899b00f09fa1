import type { money as english } from '../en/money';
import type { Same } from '../tongue';

export const money: Same<typeof english> = {
  title: 'Wie mit Geld gerechnet wird',
  lead: 'Für Möglichkeiten, Fonds, Budgets und Angebote dieser Sammlung.',
  back: 'Planung',
  notSet:
    'Das sind unsere eigenen Annahmen. Machen Sie sie zu Ihren eigenen: Fragen Sie die Person, die die Bücher führt.',
  version: (n: number) => `Hier festgelegt, Version ${n}.`,
  currency: 'Währung',
  currencyHint: 'Drei Buchstaben, zum Beispiel EUR. Beträge in anderer Währung werden nie dazugezählt.',
  rate: 'Zinssatz über der Preissteigerung',
  rateHint:
    'Was Geld heute gegenüber Geld in einem Jahr wert ist, nachdem die Preise gestiegen sind. Summen stehen immer mit diesem Satz und mit einem Punkt darunter und darüber.',
  fromInterest: 'Aus Zins und Inflation berechnen',
  fromInterestHide: 'Einklappen',
  interest: 'Zins, wie eine Bank ihn nennt',
  inflation: 'Inflation, wie sie veröffentlicht wird',
  takeRate: (percent: string) => `${percent} % übernehmen`,
  growth: 'Anstieg von Preisen und Aufwand',
  growthHint: 'Bei solchen Arbeiten. Ein Kostenpunkt kann seinen eigenen Anstieg haben.',
  contingency: 'Unvorhergesehenes',
  contingencyHint: 'Aufschlag auf die Kosten, die Sie dafür kennzeichnen.',
  years: 'Betrachtete Jahre',
  spending: 'Anteil eines Stiftungskapitals, der im Jahr ausgegeben wird',
  spendingHint: 'So viel davon lässt sich jedes Jahr ausgeben, ohne es aufzubrauchen.',
  perYear: '% im Jahr',
  percent: '%',
  yearsUnit: 'Jahre',
  keep: 'Speichern',
  kept: (n: number) => `Gespeichert, Version ${n}.`,
  reset: 'Zurück zu den Annahmen',
  notNumber: (label: string) => `${label}: Das ist keine Zahl. Schreiben Sie sie wie 3 oder 3,5.`,
  between: (label: string, low: string, high: string) => `${label}: Der Wert liegt zwischen ${low} und ${high}.`,
  noCurrency: 'Geben Sie die drei Großbuchstaben der Währung ein, zum Beispiel EUR.',
  readOnly: 'Ein anderer Tab dieser App schreibt. Ändern Sie es dort.',
};
