import type { nextSteps as english } from '../en/nextSteps';
import type { Same } from '../tongue';

export const nextSteps: Same<typeof english> = {
  title: 'Nächste Schritte',
  lead: 'Zuerst die Menschen, dann die Zonen aller Skulpturen in der Reihenfolge des Bedarfs.',
  reading: 'Die Zonen werden geordnet …',
  onlySculpture: 'Zeigen',
  allSculptures: 'Alle Skulpturen',
  empty:
    'Noch kein abgeschlossener oder laufender Rundgang. Sobald Sie Zonen angesehen haben, stehen sie hier in der Reihenfolge des Bedarfs.',
  emptyHere: 'Für diese Skulptur ist noch nichts bekannt, was zu tun wäre.',
  toSculptures: 'Zu den Skulpturen',

  people: 'Menschen zuerst',
  peopleWhat:
    'Jede dieser Stellen könnte jemanden verletzen. Sie stehen über jeder Liste, bis eine namentlich genannte Person sie schließt.',
  keepAway:
    'Halten Sie Personen fern. Verständigen Sie jetzt die für das Gelände verantwortliche Person und den Restaurator.',
  openedOn: (day: string) => `Eröffnet am ${day}`,
  close: 'Diese Meldung schließen',
  closeTitle: 'Gefahrenmeldung schließen',
  closeWhat: 'Schließen Sie sie nur, wenn die Gefahr beseitigt oder gesichert ist. Ihr Name bleibt dabei stehen.',
  closeDay: 'Tag, an dem es gesichert wurde',
  closeBy: 'Name der Person, die sie schließt',
  closeByMissing: 'Tragen Sie den Namen der Person ein, die es für sicher erklärt.',
  closeNote: 'Was getan wurde',
  closeDo: 'Es ist sicher: Meldung schließen',
  closed: 'Die Gefahrenmeldung ist geschlossen.',

  order: 'Zonen in der Reihenfolge des Bedarfs',
  orderWhat:
    'Zuerst nach der Dringlichkeitsklasse, dann nach der Last (Fläche, Gewicht und was an 100 fehlt), dann nach dem niedrigeren Index.',
  quietFold: (n: number) => (n === 1 ? '1 Zone ohne Dringlichkeit zeigen' : `${n} Zonen ohne Dringlichkeit zeigen`),
  quietHide: 'Zonen ohne Dringlichkeit verbergen',
  sculptureOrder: 'Skulpturen in der Reihenfolge des Bedarfs',

  nothingPresses: 'Keine Zone drängt. Die übrigen sind unten eingeklappt.',
  notRankedFold: (n: number) =>
    n === 1
      ? '1 Zone zeigen, die diesmal nicht beurteilt wurde'
      : `${n} Zonen zeigen, die diesmal nicht beurteilt wurden`,
  notRankedHide: 'Diesmal nicht beurteilte Zonen verbergen',
  notRankedWhat:
    'Nicht angesehen oder übernommen: Sie haben keinen Platz in der Reihenfolge und gelten nicht als intakt.',
  underWay: {
    figures: 'Die Zahlen werden berechnet.',
    firmness: 'Die Reihenfolge wird viele Male neu gezogen.',
    trends: 'Die Veränderung über die Jahre wird berechnet.',
  },
  step: {
    figures: (done: number, all: number) => `${done} von ${all === 1 ? '1 Skulptur' : `${all} Skulpturen`}`,
    firmness: (done: number, all: number) => `${done} von ${all === 1 ? '1 Ziehung' : `${all} Ziehungen`}`,
    trends: (done: number, all: number) => `${done} von ${all}`,
  },
  leaveOff: 'Abbrechen',
  leftOff: {
    figures: 'Die Berechnung wurde auf halbem Weg abgebrochen: Was hier steht, ist vielleicht nicht der letzte Stand.',
    firmness: 'Wie fest die Reihenfolge ist, wurde nicht zu Ende berechnet.',
    trends: 'Die Reihen wurden nicht zu Ende berechnet.',
  },
  goOn: 'Fortsetzen',
  noRound: (works: readonly string[]) => `Noch kein Rundgang, daher nicht in dieser Liste: ${works.join('; ')}.`,
  zoneHead: (letter: string, name: string) => `${letter} · ${name}`,
  whyHere: (rank: number) => `Warum sie an Stelle ${rank} steht`,
  burdenRange: (low: string, high: string) => `Die Last liegt zwischen ${low} und ${high} (90 %).`,
  sculpture: 'Skulptur',
  sculptureIndex: 'Index',
  activeGreen: 'Aktives Grün',

  firm: 'Wie fest ist diese Reihenfolge?',
  firmWhat: 'Was dazu beitragen würde und noch nicht bekannt ist:',
  firmCount: (firm: number, all: number) =>
    `${firm} von ${all === 1 ? 'einem geprüften Platz' : `${all} geprüften Plätzen`} ${firm === 1 ? 'ist' : 'sind'} fest. Für jede Zone wird geprüft, ob sie unter den ersten ein, drei, fünf, zehn oder mehr bleibt, zu denen ihr Platz gehört; fest ist, was in neun von zehn Ziehungen so bleibt.`,
  firmWord: { firm: 'Fest.', 'could be elsewhere': 'Könnte auch anderswo stehen.' },

  burden: 'Last',
  classes: 'Klassen',
  className: { condition: 'Zustand', urgency: 'Dringlichkeit', recommendation: 'Empfehlung' },
  classLetter: { condition: 'CC', urgency: 'UC', recommendation: 'RC' },
  proposed: 'nach der Regel vorgeschlagen',
  level: (id: string, name: string) => `${id}, ${name}`,
  classNone: 'keine Grundlage zum Urteilen',
  classOpen: (letters: string) => `${letters} offen`,
  setInstead: (name: string, proposed: string) => `gesetzt von ${name}; die Regel schlägt ${proposed} vor`,
  why: 'Warum diese Klassen, und worauf zu achten ist',
  whyHide: 'Begründung verbergen',
  set: 'Klasse setzen',
  setFor: (letter: string, sculpture: string) => `Klasse von Zone ${letter} setzen, ${sculpture}`,
  setForWork: (sculpture: string) => `Klasse setzen: ${sculpture}`,
  setTitle: 'Klassen setzen',
  setWhat:
    'Die Regel schlägt vor, eine namentlich genannte Person entscheidet. Was Sie auf „wie vorgeschlagen“ lassen, bleibt bei der Regel.',
  asProposed: (level: string) => `Wie vorgeschlagen (${level})`,
  setName: 'Ihr Name',
  setNameMissing: 'Tragen Sie den Namen der Person ein, die die Klasse setzt.',
  setNothing: 'Wählen Sie mindestens eine Klasse, die gesetzt werden soll.',
  setNote: 'Warum',
  setDo: 'Diese Klassen setzen',
  setDone: 'Die Klassen sind gesetzt.',
  cleared: 'Die Klassen folgen wieder der Regel.',
  rc3Note: 'RC3, umfassende Behandlung, wird nie nach der Regel vorgeschlagen. Nur ein Restaurator sollte sie setzen.',

  askConservator: 'Den Restaurator fragen',
  askWhat: 'Erfassen und fotografieren Sie es, und waschen oder wachsen Sie diese Zone noch nicht.',
  quoted: (kind: string) => `„${kind}“`,
  askBecause: (kinds: string) => `Hier gesehen: ${kinds}.`,

  whatNext: 'Was als Nächstes zu tun ist',
  doNext: {
    nothing: 'Jetzt nichts. Sehen Sie beim nächsten Rundgang wieder nach.',
    look: 'Sehen Sie sie an: Diese Zone wurde nicht beurteilt.',
    keep: 'Schonend waschen, trocknen lassen, wachsen und weiter beobachten.',
    local:
      'Lassen Sie zuerst die Ursache bestimmen: Eine Prüfung, eine örtliche Behandlung oder eine Reparatur kann fällig sein.',
    major: 'Ein Restaurator plant es. Bis dahin lassen Sie die Oberfläche, wie sie ist.',
  },
  cautions: 'Vorsicht',
  toSculpture: 'Skulptur öffnen',
  open: 'Gefahr für Personen melden',
  opened: 'Die Gefahr ist gemeldet. Halten Sie Personen fern.',
  toThenAndNow: 'Damals und heute',
  cancel: 'Abbrechen',
};
