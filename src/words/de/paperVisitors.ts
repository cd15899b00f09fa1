import type { paperVisitors as english } from '../en/paperVisitors';
import type { Same } from '../tongue';

export const paperVisitors: Same<typeof english> = {
  title: 'Tafel für Besucher',
  reader: 'alle, die vorbeikommen',
  head: (title: string, date: string, maker: string) => [title, date, maker].filter(Boolean).join(', '),
  outdoors:
    'Bronze im Freien kommt nie ganz zur Ruhe. Regen und Luft wirken auf ihre Oberfläche ein; wo Wasser läuft oder steht, wird sie langsam grün.',
  green: 'Grün ist kein Schmutz: Es zeigt, wo die Oberfläche sich verändert.',
  looked: (month: string) => `Etwa einmal im Jahr sehen wir das Werk genau an, zuletzt im ${month}.`,
  waxed: (month: string) =>
    `Es wird gewaschen und dünn gewachst, zuletzt im ${month}. Wachs hält eine Zeit lang das Wasser fern.`,
  please:
    'Bitte klettern Sie nicht darauf, kratzen Sie nicht und reiben Sie nichts blank. Ist etwas lose, zerbrochen oder bemalt, sagen Sie es uns.',
  tell: (contact: string) => `${contact}`,
  count: (n: string) => `${n} Wörter auf der Tafel. 60 bis 120 werden im Stehen gelesen.`,
  about: 'Ein oder zwei Sätze zum Werk',
  aboutHint: 'Was Besucher wissen möchten: von wem, wann, woraus. Sie stehen vor den Worten über Bronze.',
  contact: 'Wem man es sagt',
  contactHint: 'Eine Telefonnummer oder eine Stelle, kein Name.',
  whole: 'Der ganze Text in eigenen Worten',
  wholeHint: 'Tritt an die Stelle von allem, was hier entworfen ist.',
  lacks: {
    short: (n: string) => `Die Tafel hat ${n} Wörter; weniger als 60 lassen eine Frage offen.`,
    long: (n: string) => `Die Tafel hat ${n} Wörter; mehr als 120 liest im Stehen niemand.`,
    contact: 'Es ist nicht gesagt, wem man es meldet, wenn etwas zerbrochen ist.',
    waxed: 'Zu diesem Werk ist kein Wachsen festgehalten; die Tafel sagt deshalb nichts von Wachs.',
  },
};
