import type { reasonsOfBring as english } from '../en/reasonsOfBring';
import type { Same } from '../tongue';

/** Why a list or a file brought in is not taken as it stands. */
export const reasonsOfBring: Same<typeof english> = {
  'bring: empty list': () => 'In dieser Liste ist keine Zeile.',
  'bring: list too long': (s) =>
    `Diese Liste hat ${s.number('rows')} Zeilen, mehr als die ${s.number('most')}, die auf einmal übernommen werden. Lesen Sie sie in Teilen ein.`,
  'bring: quote not closed': (s) =>
    `Ein Anführungszeichen, das in Zeile ${s.number('line')} öffnet, wird nie geschlossen; die Zeilen danach lassen sich nicht trennen. Schließen Sie es in der Liste und wählen Sie die Liste noch einmal.`,
  'bring: work missing': () =>
    'Es ist kein Werk genannt. Wählen Sie die Spalte, die es nennt, oder ein Werk für alle Zeilen.',
  'bring: work not known': (s) =>
    `Kein Werk hier hat die Nummer oder den Titel „${s.text('text')}“. Wählen Sie das gemeinte Werk, oder lassen Sie die Zeile weg.`,
  'bring: work unclear': (s) => `Mehr als ein Werk hier heißt „${s.text('text')}“. Wählen Sie das gemeinte.`,
  'bring: zone not known': (s) =>
    `Dieses Werk hat keine Zone mit dem Buchstaben oder Namen „${s.text('text')}“. Nehmen Sie die Spalte als Notiz, oder berichtigen Sie die Liste.`,
  'bring: day missing': () => 'Dort steht kein Datum.',
  'bring: day order unclear': (s) =>
    `„${s.text('text')}“ kann zwei verschiedene Tage bedeuten. Wählen Sie, ob der Tag oder der Monat zuerst steht.`,
  'bring: day not a day': (s) =>
    `„${s.text('text')}“ ist kein Tag des Kalenders. Stimmt die Reihenfolge von Tag und Monat, oder ist es ein Versehen?`,
  'bring: day a bare number': (s) =>
    `„${s.text('text')}“ ist, wie eine Tabellenkalkulation Tage zählt. Formatieren Sie die Spalte dort als Datum und speichern Sie die Liste neu.`,
  'bring: day ahead': (s) => `„${s.text('text')}“ liegt noch in der Zukunft. Übernommen wird nur, was getan ist.`,
  'bring: no year in it': (s) =>
    `„${s.text('text')}“ nennt kein Jahr: Es wird gespeichert wie geschrieben, und keine Zahl kann es verwenden.`,
  'bring: short year': (s) => `„${s.text('text')}“ wird als Tag im Jahr ${s.text('year')} gelesen.`,
  'bring: sort missing': () =>
    'Es ist nicht gesagt, was getan wurde. Wählen Sie eine Art der Behandlung für solche Zeilen.',
  'bring: sort not chosen': (s) => `Wählen Sie, was „${s.text('text')}“ ist.`,
  'bring: coats not read': (s) => `„${s.text('text')}“ ist keine Zahl von Schichten; es kommt in die Notiz.`,
  'bring: text too long': (s) =>
    `Der Text für „${s.text('column')}“ ist länger als ${s.number('most')} Zeichen. Kürzen Sie ihn in der Liste.`,
  'bring: row twice': (s) => `Sagt dasselbe wie Zeile ${s.number('line')} und wird einmal übernommen.`,
};
