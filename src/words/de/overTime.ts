import type { overTime as english } from '../en/overTime';
import { unitOf } from '../format';
import type { Same } from '../tongue';

const rounds = (n: number): string => (n === 1 ? '1 Rundgang' : `${n} Rundgänge`);

export const overTime: Same<typeof english> = {
  title: 'Über die Jahre',
  lead: 'Wie es diesem Werk von Rundgang zu Rundgang erging, wie lange seine Beschichtungen hielten und was als Nächstes kommt, wenn die Pflege weitergeht wie bisher.',
  link: 'Über die Jahre',
  reading: 'Wird berechnet …',
  gone: 'Diese Skulptur ist nicht auf diesem Gerät.',
  noRounds: 'Zu dieser Skulptur gibt es noch keinen Rundgang. Die Jahre beginnen mit dem ersten.',
  startRound: 'Rundgang beginnen',
  back: 'Zurück zur Skulptur',

  chooseZone: 'Zeigen',
  wholeWork: 'Das ganze Werk',
  index: 'Zustandsindex',
  active: { green: 'Aktives Grün', bare: 'Blankes Metall', scale: 'Kalkbelag' },
  actionLevel: (level: string) => `Handlungsschwelle ${level}`,

  subject: {
    index: 'Der Zustandsindex',
    green: 'Die Fläche mit aktivem Grün',
    bare: 'Die Fläche mit blankem Metall',
    scale: 'Die Fläche mit Kalkbelag',
  },
  unit: { index: 'Punkte', m2: 'm²' },
  trend: {
    trend: (what: string, up: boolean, a: string, range: string, n: number) =>
      `${what} ${up ? 'steigt' : 'sinkt'} um ${a} im Jahr (${range}): ein Trend über ${rounds(n)}.`,
    rising: (what: string, n: number) =>
      `${what} ist bisher jedes Mal gestiegen, über ${rounds(n)}: Fünf sind nötig, bevor das ein Trend heißen darf.`,
    falling: (what: string, n: number) =>
      `${what} ist bisher jedes Mal gesunken, über ${rounds(n)}: Fünf sind nötig, bevor das ein Trend heißen darf.`,
    none: (what: string, n: number) => `${what} zeigt über ${rounds(n)} keinen Trend.`,
    few: (what: string, n: number) =>
      `${what}: ${rounds(n)}, seit die Oberfläche zuletzt eine andere wurde. Drei sind nötig, um die Richtung zu nennen.`,
    none0: (what: string) => `${what}: kein Rundgang, aus dem es hervorginge.`,
  },
  forecast: (day: string, value: string, range: string) =>
    `Bis zum nächsten Rundgang, etwa ${day}: ${value} (${range}), wenn die Pflege weitergeht wie bisher.`,
  otherSurveyor: (who: string) => `andere Person: ${who}`,
  someone: 'nicht angegeben, wer',

  growth: 'Wo die Veränderung liegt',
  growthWhat: (from: string, to: string) =>
    `Was jede Zone von ${from} bis ${to} zur aktiven Fläche beitrug, in ${unitOf('area')}.`,
  sinceBreak: (zone: string, day: string) => `${zone} (ab ${day})`,
  growthNone: 'Über diese Rundgänge hat sich in keiner Zone die aktive Fläche verändert.',
  grewBy: (m2: string) => `gewachsen um ${m2}`,
  shrankBy: (m2: string) => `geschrumpft um ${m2}`,

  holds: 'Wie lange die Beschichtung hielt',
  holdsWhat:
    'Jeder Balken reicht vom letzten Blick, der die Zone frei sah, bis zum ersten, der das Grün sah. Den Tag selbst hat niemand gesehen.',
  holdsNone:
    'Für dieses Werk ist keine Beschichtung eingetragen. Standzeiten beginnen mit dem ersten Wachs im Logbuch.',
  toLogbook: 'Logbuch öffnen',
  zone: (letter: string, name: string) => `Zone ${letter}, ${name}`,
  barsTitle: 'Monate von der Beschichtung bis zum Grün',
  yearlyOnly: (n: number) =>
    n === 1
      ? '1 Zone zeigen, von der nur die Rundgänge berichten'
      : `${n} Zonen zeigen, von denen nur die Rundgänge berichten`,
  yearlyOnlyHide: 'Zonen verbergen, von denen nur die Rundgänge berichten',
  events: {
    spot: 'Wieder da heißt: der erste gesehene hellgrüne Fleck.',
    cover: 'Wieder da heißt: Grün im Metall ab der festgesetzten Bedeckung in einem Rundgang.',
  },
  words: {
    'getting shorter': 'Wird kürzer',
    'getting longer': 'Wird länger',
    'looks shorter, not proven': 'Sieht kürzer aus, nicht belegt',
    'no sign of it': 'Kein Anzeichen, dass es kürzer wird',
    'too few': 'Zu wenige, um die Richtung zu nennen',
  },
  lastPair: {
    'shorter than the last one': 'Die letzte Standzeit war kürzer als die davor.',
    'longer than the last one': 'Die letzte Standzeit war länger als die davor.',
    overlap: 'Die letzten beiden überschneiden sich: Welche länger war, kann niemand sagen.',
  },
  waxAgain: (day: string, low: string, high: string) => `Wieder wachsen bis ${day} (${low} bis ${high}).`,
  waxAgainOpen: (day: string) => `Wieder wachsen bis ${day}.`,
  asks: 'Das Wachs hält hier nicht: Fragen Sie den Restaurator.',
  nextLook: (day: string) => `Nächster Kontrollblick: ${day}.`,
  nextLookBetween: (low: string, high: string) =>
    `Ein Kontrollblick zwischen ${low} und ${high} wäre fast ebenso aufschlussreich.`,
  ifCoated: (on: string, low: string, high: string) =>
    `Bei Beschichtung am ${on} wäre ein Kontrollblick zwischen ${low} und ${high} am aufschlussreichsten.`,
  why: 'Warum?',
  whyHide: 'Begründung verbergen',
  onNow: {
    clear: (day: string) => `Jetzt darauf: Beschichtung vom ${day}, beim letzten Blick frei.`,
    back: (day: string) => `Jetzt darauf: Beschichtung vom ${day}; das Grün ist wieder da.`,
    'not clean': (day: string) => `Jetzt darauf: Beschichtung vom ${day}; gleich danach stand dort Grün.`,
    unknown: (day: string) => `Jetzt darauf: Beschichtung vom ${day}; seither hat niemand nachgesehen.`,
  },

  takesOff: 'Was vom Index abgeht',
  takesOffWhat: (missing: string) =>
    `Im letzten Rundgang fehlen ${missing} Punkte an 100. Abzüge multiplizieren sich; der Teil jedes Befunds ist so zugeteilt, dass die Teile zusammen die Summe ergeben.`,
  takesOffNone: 'Nichts geht vom Index ab: kein Befund im letzten Rundgang.',
  points: (n: string) => (n === '1' ? '1 Punkt' : `${n} Punkte`),
  more: (n: number) => (n === 1 ? '1 weiteren Befund zeigen' : `${n} weitere Befunde zeigen`),
  moreHide: 'Weniger Befunde zeigen',
  inZone: (kind: string, letter: string) => `${kind}, Zone ${letter}`,

  done: 'Was getan wurde',
  doneNone: 'Im Logbuch steht nichts.',
  doneOn: (day: string, what: string) => `${day}: ${what}`,
  breaks: 'seither ist die Oberfläche eine andere',
  seen: { seen: 'beurteilt', carried: 'übernommen', 'not-looked': 'nicht angesehen' },
  cells: 'Welche Zonen gesehen wurden',
  cellsWhat: 'Eine gefüllte Zelle wurde beurteilt, eine offene nicht angesehen, eine schräg gestreifte übernommen.',
};
