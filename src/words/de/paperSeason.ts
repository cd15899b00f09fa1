import type { paperSeason as english } from '../en/paperSeason';
import type { Same } from '../tongue';

export const paperSeason: Same<typeof english> = {
  title: 'Saisonprotokoll',
  titleOf: (year: string) => `Saisonprotokoll ${year}`,
  reader: 'Gebäudeverwaltung, Revision',
  choice: (work: string, year: string) => `${work}, ${year}`,

  left: 'Nicht getan',
  nothing: (year: string) => `Für ${year} ist nichts aufgeschrieben.`,
  allDone: 'Nach dem Logbuch wurde im Lauf des Jahres jede Zone gewaschen und beschichtet.',
  notWashed: (zones: string) => `Nicht gewaschen: ${zones}.`,
  notCoated: (zones: string) => `Nicht beschichtet: ${zones}.`,
  notReached: (day: string, what: string) => `${day}, nicht erreicht: ${what}`,

  done: 'Was getan wurde',
  columns: {
    date: 'Datum',
    method: 'Verfahren',
    product: 'Mittel und Charge',
    people: 'Personen und Stunden',
    gate: 'Luft und Oberfläche',
    zones: 'Zonen',
  },
  dash: '–',
  gateNone: 'keine Messung',
  gateNotAsked: 'nicht gefragt',
  gateHow:
    'Luft und Oberfläche: was die Messung sagte, wann, und wie weit die Oberfläche über dem Taupunkt lag. Stunden, wie die Arbeitenden sie aufgeschrieben haben; eine Unsicherheit ist nicht bekannt.',
  overridden: (by: string, why: string) => `Fortgesetzt von ${by}: ${why}`,

  sums: 'Insgesamt',
  hours: (role: string, hours: string, unknown: number) =>
    `${role}: ${hours} Std.${unknown === 0 ? '' : unknown === 1 ? ', einmal nicht aufgeschrieben' : `, ${unknown}-mal nicht aufgeschrieben`}`,
  product: (product: string, times: string, amount: string) => `${product}: ${times}${amount && `, ${amount}`}`,
  times: (n: number, figure: string) => (n === 1 ? 'einmal' : `${figure}-mal`),
  cost: (amount: string) => `Aufgeschriebene Kosten: ${amount}`,
  rounds: (days: string) => `Rundgänge: ${days}.`,
  looks: (n: number, figure: string, clear: string, green: string, unsure: string) =>
    `${n === 1 ? '1 Kontrollblick' : `${figure} Kontrollblicke`}: ${clear} ohne Grün, ${green} Grün wieder da, ${unsure} unsicher.`,
  readings: 'Messungen der Luft',
  reading: (day: string, time: string, before: string, said: string, margin: string) =>
    `${day}, ${time}, vor dem ${before}: ${said}, ${margin} über dem Taupunkt`,
  before: { wash: 'Waschen', wax: 'Wachsen', other: 'Beginn anderer Arbeit' },
  notes: 'Notizen',
  note: (day: string, note: string) => `${day}: ${note}`,
  signs: { did: 'für die ausgeführte Arbeit', checked: 'geprüft' },
  lacks: {
    nothing: 'Für dieses Jahr ist nichts aufgeschrieben.',
    people: (n: number) =>
      n === 1
        ? '1 Eintrag sagt nicht, wer gearbeitet hat und wie lange.'
        : `${n} Einträge sagen nicht, wer gearbeitet hat und wie lange.`,
    batch: (n: number) => (n === 1 ? '1 Beschichtung nennt keine Charge.' : `${n} Beschichtungen nennen keine Charge.`),
    reading: (n: number) =>
      n === 1
        ? 'Zu 1 Beschichtung fehlt die Messung von Luft und Oberfläche.'
        : `Zu ${n} Beschichtungen fehlt die Messung von Luft und Oberfläche.`,
  },
};
