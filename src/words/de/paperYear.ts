import type { paperYear as english } from '../en/paperYear';
import type { Same } from '../tongue';

export const paperYear: Same<typeof english> = {
  title: (year: string) => `Das Jahr ${year} auf einer Seite`,
  sort: 'Das Jahr auf einer Seite',
  reader: 'die Leitung des Hauses',
  own: {
    wanted: 'Gewünschte Entscheidungen',
    wantedHint:
      'Eine je Zeile, höchstens drei. Solange Sie nichts schreiben, fragt das Papier, was sich aus den Einträgen ergibt.',
    head: 'Ein Satz zum Jahr',
    headHint: 'Was Sie sagen würden, wenn Sie nur einen Satz hätten.',
  },
  notLooked: {
    all: 'Jedes Werk hatte in diesem Jahr einen Rundgang, und jede Zone wurde angesehen.',
    works: (names: string) => `In diesem Jahr ohne Rundgang: ${names}.`,
    zones: (work: string, zones: string) => `${work}: ${zones} nicht angesehen.`,
  },
  state: 'Stand der Werke',
  map: 'Plan des Gartens',
  mapTold: (rows: string) => `Plan des Gartens mit einem Zeichen für jedes Werk. ${rows}`,
  row: (work: string, sign: string) => `${work}: ${sign}.`,
  signs: {
    0: 'Kreis: höchstens auf lange Sicht etwas zu tun',
    1: 'Dreieck: in den nächsten Jahren etwas zu tun',
    2: 'Quadrat: bald etwas zu tun',
    3: 'schwarze Raute: sofort etwas zu tun',
    none: 'unterbrochener Ring: in diesem Jahr kein Rundgang',
  },
  short: { 0: 'langfristig', 1: 'nächste Jahre', 2: 'bald', 3: 'sofort', none: 'kein Rundgang' },
  columns: { work: 'Werk', due: 'Etwas zu tun', index: 'Index', before: 'Zuvor', verdict: 'Urteil des Jahres' },
  how: 'Index: 100 ist intakt; die Spanne enthält den wahren Wert in neun von zehn Fällen und rührt daher, wie grob das Auge die Bedeckung beurteilt. Wie bald etwas zu tun ist: nach EN 16096 durch Regel vorgeschlagen oder von einer namentlich genannten Person festgelegt.',
  notSaid: 'offen',
  sure: 'Sichere Veränderungen',
  sureNone:
    'Keine, die unter allem Verglichenen nicht Zufall sein könnte. Was an einem Werk für sich sicher ist, steht in dessen Zustandsbericht.',
  unsure: 'Unsichere Veränderungen',
  unsureNone: 'Keine: Was sich zu verändern schien, steht links.',
  changed: (work: string, zone: string, kind: string, from: string, to: string, since: string) =>
    `${work}, ${zone}: ${kind} von ${from} auf ${to} seit ${since}`,
  came: (work: string, zone: string, kind: string, to: string, since: string) =>
    `${work}, ${zone}: ${kind} neu${to && `, jetzt ${to}`}, ${since} nicht da`,
  went: (work: string, zone: string, kind: string, from: string, since: string) =>
    `${work}, ${zone}: ${kind} fort, ${since} noch da${from && ` (${from})`}`,
  clearlyWorse: 'deutlich schlechter',
  clearlyBetter: 'deutlich besser',
  worse: 'schlechter',
  better: 'besser',
  grown: (work: string, what: string, from: string, to: string, since: string) =>
    `${work} im Ganzen: ${what}, nicht in Ruhe, von ${from} auf ${to} seit ${since}`,
  what: { green: 'Grün', bare: 'blankes Metall', scale: 'Kalkbelag' },
  onlyFrom: (share: string) => `sicher erst über ${share}`,
  couldBeChance: 'bei so vielen Vergleichen kann es Zufall sein',
  changesHow:
    'Anteil an der Zone, nach Augenmaß beurteilt. Eine Veränderung gilt als sicher, wenn sie größer ist, als die Unsicherheit beider Urteile zulässt, mit einer Irrtumswahrscheinlichkeit von eins zu zehn über die ganze Seite.',
  wanted: 'Gewünschte Entscheidungen',
  wantedNone: 'In diesem Jahr keine.',
  wire: (title: string, what: string) =>
    `Neu entscheiden: ${title}. Was uns umstimmen sollte, ist eingetreten: ${what}.`,
  review: (title: string, day: string) => `Die Entscheidung „${title}“ wieder ansehen, wie für den ${day} vereinbart.`,
  money: (campaign: string, work: string) => `Geld für ${work}, ${campaign}: weiter sammeln oder aufgeben.`,
  verdict: (work: string, verdict: string, why: string) => `${work}: ${verdict}. ${why}`,
  cost: 'Geld',
  spent: (year: string) => `Ausgegeben ${year}`,
  spentHow: (entries: string) => `Summe von ${entries} des Logbuchs, die Kosten nennen; die übrigen nennen keine.`,
  spentNone: 'Kein Eintrag des Logbuchs nennt Kosten.',
  lift: (year: string) => `Hebebühne ${year}`,
  liftHow: (days: string) => `Wie geplant für ${days}.`,
  budget: (year: string) => `Zur Verfügung ${year}`,
  budgetHow: 'Wie im Jahresplan eingetragen.',
  noPlan: (year: string) => `Für ${year} ist noch nichts geplant.`,
  entries: (n: number, figure: string) => (n === 1 ? 'einem Eintrag' : `${figure} Einträgen`),
  days: (n: number, figure: string) => (n === 1 ? 'einen Tag' : `${figure} Tage`),
  lacks: {
    map: 'Wo die Werke stehen: der Plan des Geländes.',
    verdicts: (names: string) => `Das Urteil des Jahres für ${names}.`,
    next: (year: string) => `Ein Plan für ${year}: was zur Verfügung stehen wird.`,
  },
};
