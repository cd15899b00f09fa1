import type { paperInsurer as english } from '../en/paperInsurer';
import type { Same } from '../tongue';

export const paperInsurer: Same<typeof english> = {
  title: 'Mitteilung an die Versicherung',
  reader: 'Makler, Versicherung',
  why: 'Wozu diese Mitteilung dient',
  whyHint:
    'Police, Leihgabe oder Schaden, zu dem sie gehört; eine Nummer, die die Versicherung kennt. Bleibt das Feld leer, kommt das Papier ohne diese Angabe aus.',

  condition: 'Zustand, wie er ist',
  conditionHow: (day: string, type: string, surface: string) =>
    `Festgehalten am ${day} (${type}, ${surface}). Was hier steht, war an diesem Tag vorhanden.`,
  indexHow: (share: string) =>
    `0 bis 100, 100 ist intakt; über ${share} der Fläche. In Klammern die 90-%-Spanne, aus der Schätzung nach Augenmaß.`,
  class: 'Zustandsklasse',
  classHow:
    'Nach DIN EN 16096:2012, in eigenen Worten, 0 bis 3: wie stark sichtbare Anzeichen sind. Wie von einer namentlich genannten Person gesetzt, sonst wie von der Regel vorgeschlagen.',
  bySetter: (name: string, by: string) => `${name}. Gesetzt von ${by}`,
  found: 'Was bereits vorhanden war und seit wann es bekannt ist',
  foundColumns: {
    finding: 'Befund',
    zones: 'Zonen und Bedeckung',
    since: 'Zuerst festgehalten',
  },
  foundHow:
    'Bedeckung ist nach Augenmaß geschätzt; ihre Spanne steht im Zustandsbericht. „Zuerst festgehalten“ ist der erste Rundgang, der den Befund dort nennt, nicht der Tag seines Entstehens.',
  foundNone: 'In keiner der angesehenen Zonen wurde etwas gefunden.',
  photos: 'Fotos',

  incidents: 'Vorfälle',
  incidentsNone: 'Es ist kein Vorfall festgehalten.',
  incident: (day: string, sort: string, what: string) => `${day}. ${sort}: ${what}`,
  incidentDone: (what: string) => `Getan: ${what}`,
  incidentOpen: 'Noch offen.',
  incidentClosed: (day: string) => `Abgeschlossen am ${day}.`,

  upkeep: 'Nachweis der Pflege',
  upkeepNone: 'Es ist keine Pflege festgehalten.',
  upkeepColumns: {
    year: 'Jahr',
    rounds: 'Rundgänge',
    looks: 'Kontrollblicke',
    washed: 'Gewaschen',
    coated: 'Beschichtet',
    other: 'Andere Arbeiten',
  },
  upkeepHow: 'Aus Logbuch, Rundgängen und Kontrollblicken: Tage, wie sie aufgeschrieben wurden.',
  upkeepOlder: (n: number, figure: string) =>
    n === 1 ? '1 früheres Jahr liegt im Archiv.' : `${figure} frühere Jahre liegen im Archiv.`,

  contractors: 'Arbeiten von Firmen und Heißarbeiten',
  contractorsNone: 'Es sind keine Arbeiten einer Firma und keine Heißarbeiten festgehalten.',
  campaign: (title: string, when: string, who: string) => [title, when, who].filter(Boolean).join('; '),
  campaignFrom: (first: string, last: string) => (last ? `${first} bis ${last}` : `seit ${first}`),
  campaignBy: (who: string) => `durch ${who}`,
  work: (what: string, when: string, where: string, who: string) => [what, when, where, who].filter(Boolean).join('; '),
  hotDays: 'Tage mit Heißarbeit',
  hotColumns: {
    date: 'Datum',
    permit: 'Erlaubnisschein',
    by: 'Erteilt von',
    clear: 'Freibereich',
    watch: 'Brandwache',
  },
  watch: (minutes: string) => `${minutes} min verlangt`,
  watchKept: (by: string) => `gehalten, von ${by}`,
  watchNotKept: 'niemand hat aufgeschrieben, dass sie gehalten wurde',
  hotHow:
    'Wie am Tag von den Genannten aufgeschrieben. Ob eine Regel eingehalten wurde, beurteilt dieses Papier nicht.',

  inserts: 'Einlagen und ihre Werte',
  insertColumns: { insert: 'Einlage', zone: 'Zone', count: 'Anzahl', value: 'Festgehaltener Wert' },
  noValue: (inserts: string) => `Kein Wert ist festgehalten für: ${inserts}.`,
  insertsHow: 'Werte, wie sie eingegeben wurden, jeweils mit Notiz; dieses Papier bildet keine.',

  risk: 'Wer das Risiko trägt, soweit festgehalten',
  riskNone: 'Wer das Risiko am Standort, auf dem Transport oder bei einer Behandlung trägt, ist nicht festgehalten.',
  riskMove: (sort: string, from: string, to: string, left: string, back: string, insurance: string) =>
    `${sort}, ${from} nach ${to}, ${left}${back ? ` bis ${back}` : ''}: ${insurance}`,
  riskMoveNone: 'keine Angabe zur Versicherung',
  warranty: (title: string, who: string, until: string, terms: string) =>
    `${title}: ${[who && `${who} steht für die Arbeit ein`, until && `bis ${until}`].filter(Boolean).join(' ')}${terms ? `. ${terms}` : '.'}`,
  own: 'Was sonst vereinbart ist',
  ownHint:
    'Wer das Risiko am Standort, auf dem Transport, bei einer Behandlung trägt, wie es in Ihren Verträgen steht. Bleibt das Feld leer, kommt das Papier ohne diese Angabe aus.',
  signs: 'für den Eigentümer',
  lacks: {
    values: (n: number) => (n === 1 ? '1 Einlage hat keinen Wert.' : `${n} Einlagen haben keinen Wert.`),
    risk: 'Wer das Risiko trägt, ist nicht festgehalten: Sagen Sie es unten, wie es in Ihren Verträgen steht.',
    photos: 'Zum genannten Rundgang gehört kein Foto.',
    watch: 'Zu einem Tag mit Heißarbeit fehlt die Bestätigung, dass die Brandwache gehalten wurde.',
  },
};
