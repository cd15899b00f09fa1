import type { budget as english } from '../en/budget';
import type { Same } from '../tongue';

const zones = (n: number): string => (n === 1 ? '1 Zone' : `${n} Zonen`);

export const budget: Same<typeof english> = {
  title: 'Budget eines Jahres',
  lead: 'Welche Zonen mit einer Summe zu behandeln sind, damit am wenigsten Abzug bleibt, was dann liegen bleibt, und was mehr Geld bewirken würde.',
  back: 'Planung',
  year: 'Jahr',
  readOnly: 'Ein anderer Tab dieser App schreibt. Ändern Sie es dort.',
  empty: 'Noch nichts abzuwägen',
  emptyWhat: 'Machen Sie zuerst einen Rundgang: Seine Befunde sagen, was zu verlieren ist.',

  prices: 'Was Arbeit kostet',
  pricesNone:
    'Geben Sie die Preise an, die Sie kennen: für Waschen, Wachsen, örtliche Behandlung. Ein Preis kann je Quadratmeter, je Zone oder einmal je Werk gelten.',
  changePrices: 'Preise ändern',
  copyPrices: (year: number) => `Preise von ${year} übernehmen`,
  work: 'Arbeit',
  price: 'Preis',
  per: { m2: 'je m²', zone: 'je Zone', work: 'einmal je Skulptur' },
  guessed: 'Die Preise haben Sie selbst eingegeben; sie beruhen auf keinem Angebot.',

  sum: 'Summe für das Jahr',
  sumHint: 'Probieren Sie Summen: Alles darunter folgt.',
  keepSum: (year: number) => `Als Budget ${year} speichern`,
  kept: 'Gespeichert.',
  lifts: (amount: string) => `Davon sind ${amount} für die schon geplanten Hebebühnentage.`,
  liftsMixed: 'Die Hebebühnentage sind in einer anderen Währung geplant und werden nicht abgezogen.',
  tooSmall: 'Die schon geplanten Hebebühnentage kosten mehr als diese Summe.',

  plan: 'Was damit zu tun ist',
  inShort: (spent: string, sum: string, taken: string) => `${spent} von ${sum} verringern den Abzug um ${taken}.`,
  nothing: 'Für diese Summe lässt sich nichts tun, was einen Preis hat.',
  undone: 'Bleibt liegen',
  next: (more: string, taken: string) => `Mit ${more} mehr sänke er um weitere ${taken}.`,
  allDone: 'Mehr Geld würde den Abzug nicht weiter verringern.',
  zone: 'Zone',
  cost: 'Kosten',
  loss: 'Abzug davor und danach',
  fromTo: (before: string, after: string) => `${before} auf ${after}`,
  once: (work: string, type: string) => `${work}: einmal für ${type}`,
  askFirst: 'ein Restaurator leitet',
  who: 'Wo ein Restaurator leitet, sagt dies nur, wie weit das Geld reichen würde. Ob und wie es getan wird, sagt der Restaurator.',
  zoneOf: (work: string, letter: string, name: string) => `${work}, ${letter} · ${name}`,

  left: 'Was liegen bleibt',
  leftWhat: (n: number) => `${zones(n)} mit verbleibendem Abzug, die größten zuerst.`,
  leftNone: 'Nichts bleibt liegen.',
  stopped: (n: number) =>
    `${n === 1 ? '1 Zone wartet' : `${n} Zonen warten`} auf das Wort des Restaurators; dort ist keine Arbeit geplant. Halten Sie Geld für den Besuch zurück.`,
  more: (n: number) => (n === 1 ? '1 weitere Zone zeigen' : `${n} weitere Zonen zeigen`),
  fewer: 'Einklappen',
  m2: 'Verbleibender Abzug',
  why: 'Warum',
  notJudged: (n: number) =>
    n === 1
      ? '1 Zone wurde im letzten Rundgang nicht angesehen und bleibt aus allen Summen heraus.'
      : `${n} Zonen wurden im letzten Rundgang nicht angesehen und bleiben aus allen Summen heraus.`,

  curve: 'Wie es sich mit der Summe ändert',
  curveLabel: 'Liegen gebliebener Abzug, nach ausgegebener Summe',
  curveSum: 'Summe',
  curveUndone: 'Bleibt liegen',
  here: 'diese Summe',
  how: 'Wie abgewogen wird',
  howHide: 'Einklappen',
  counted: 'Welche Wirkung jeder Arbeit angerechnet wird',
  countedUpTo: (share: string) => `wo es bis zu ${share} der Zone bedeckt`,
  countedWith: (other: string) => `zusammen mit: ${other}, wo das einen Preis hat`,
  works: 'Werke, die abgewogen werden',
  worksWhat:
    'Lassen Sie ein Werk weg, wenn entschieden ist, es dieses Jahr nicht anzurühren. Das wird nicht gespeichert.',
  leftOut: (works: string) => `Weggelassen: ${works}.`,

  sheet: {
    title: (year: number) => `Preise ${year}`,
    type: (n: number) => `Arbeit ${n}`,
    price: (n: number) => `Preis ${n}`,
    per: (n: number) => `Preis ${n} gilt`,
    add: 'Preis hinzufügen',
    remove: (n: number) => `Preis ${n} entfernen`,
    save: 'Speichern',
    saved: 'Die Preise sind gespeichert.',
  },
};
