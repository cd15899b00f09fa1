import type { holds as english } from '../en/holds';
import type { Same } from '../tongue';

export const holds: Same<typeof english> = {
  title: 'Wie lange das Wachs hält',
  link: 'Wie lange das Wachs hält',
  lead: 'Aus Logbuch, Rundgängen und Kontrollblicken: wie lange jede Beschichtung das Grün fernhielt, wann wieder zu wachsen ist und wann ein Kontrollblick am meisten aussagt.',
  reading: 'Beschichtungen, Rundgänge und Kontrollblicke werden gelesen …',
  stillWorking: (n: number) => (n === 1 ? '1 Skulptur wird noch berechnet.' : `${n} Skulpturen werden noch berechnet.`),

  noZones: 'Es gibt noch keine Zone, die zu beschichten oder anzusehen wäre.',
  noZonesDo:
    'Legen Sie eine Skulptur an und teilen Sie sie in Zonen. Tragen Sie dann jedes Wachsen in ihr Logbuch ein.',
  noCoating: 'Noch ist keine Beschichtung eingetragen.',
  noCoatingDo:
    'Öffnen Sie eine Skulptur, dann ihr Logbuch, und tragen Sie jedes Wachsen mit seinem Tag ein, auch das früherer Jahre. Eine Standzeit beginnt mit einer Beschichtung.',
  noLooks: 'Beschichtungen sind eingetragen, aber seither hat niemand nachgesehen.',
  noLooksDo:
    'Eine Standzeit endet irgendwo zwischen dem letzten Blick, der frei sah, und dem ersten, der Grün sah. Machen Sie einen Rundgang, oder gehen Sie den Rundweg: Drei Minuten je Werk genügen.',
  toSculptures: 'Zu den Skulpturen',
  toWalk: 'Rundweg beginnen',
  toLogbook: 'Logbuch',
  toLook: 'Jetzt nachsehen',
  toSculpture: 'Skulptur öffnen',

  show: 'Zeigen',
  all: 'Alle Skulpturen',
  count: (held: string, zones: string, ends: string) => `${held} in ${zones}; ${ends}.`,
  holdsOf: (n: number) => (n === 1 ? '1 Standzeit' : `${n} Standzeiten`),
  zonesOf: (n: number) => (n === 1 ? '1 Zone' : `${n} Zonen`),
  endsOf: (n: number) => (n === 1 ? 'bei 1 davon wurde das Ende gesehen' : `bei ${n} davon wurde das Ende gesehen`),

  zones: 'Zone für Zone',
  zonesWhat:
    'Zuerst, wo das Wachs nicht hält, dann nach dem Tag, an dem wieder zu wachsen oder nachzusehen ist. Der Tag ist auf den Wochentag verschoben, an dem Sie unterwegs sind.',
  noZoneHere: 'Für keine Zone dieser Skulptur ist eine Beschichtung eingetragen.',
  quietFold: (n: number) =>
    n === 1 ? '1 Zone zeigen, bei der nichts ansteht' : `${n} Zonen zeigen, bei denen nichts ansteht`,
  quietHide: 'Zonen verbergen, bei denen nichts ansteht',
  zoneHead: (letter: string, name: string) => `${letter} · ${name}`,

  onIt: 'Jetzt darauf',
  nothingOn: 'Keine Beschichtung bekannt',
  coated: (what: string, day: string) => `${what}, ${day}`,
  coatedBetween: (what: string, first: string, last: string) => `${what}, zwischen ${first} und ${last}`,
  state: {
    clear: (day: string) => `frei gesehen am ${day}`,
    back: (day: string) => `Grün gesehen am ${day}`,
    'not clean': (day: string) => `gleich danach Grün, am ${day}`,
    unknown: () => 'seither hat niemand nachgesehen',
  },
  past: 'Über der erwarteten Standzeit',
  expected: 'So lange hält die Hälfte solcher Beschichtungen',

  waxAgain: 'Wieder wachsen bis',
  range: (low: string, high: string) => `${low} bis ${high}`,
  notBefore: (low: string) => `nicht vor ${low}`,
  notAfter: (high: string) => `bis ${high}`,
  stopped: 'Noch nicht: Hier wurde ein Stoppbegriff gesehen. Fragen Sie den Restaurator',
  doesNotHold: 'Das Wachs hält hier nicht: Fragen Sie den Restaurator',
  noNeed: 'Derzeit kein Termin nötig',
  greenBack: 'Das Grün ist wieder da',
  between: (first: string, last: string) =>
    `Zwischen ${first} und ${last}: Das kann nur ein Kontrollblick dazwischen klären`,
  notKnown: 'Noch nicht bekannt',

  nextLook: 'Nächster Kontrollblick',
  bestBetween: (low: string, high: string) => `am aufschlussreichsten zwischen ${low} und ${high}`,
  yearlyRound: 'Der jährliche Rundgang genügt',
  ifCoated: (on: string, day: string) => `Bei Wachsen am ${on}: nachsehen am ${day}`,
  afterCoating: 'Nach der nächsten Beschichtung',

  why: 'Warum',
  whyHide: 'Begründung verbergen',
  whyFor: (zone: string) => `Warum, für ${zone}`,

  holdsTitle: 'Ihre Standzeiten',
  spanSince: (what: string, day: string) => `Seit ${what}, ${day}`,
  tableCoated: 'Beschichtet',
  tableClear: 'Zuletzt frei',
  tableGreen: 'Erstes Grün',
  tableMonths: 'Monate',
  tableWhy: 'Worauf es beruht',
  nobody: 'niemand sah nach',
  months: (low: string, high: string) => `über ${low}, bis ${high}`,
  monthsOver: (low: string) => `über ${low}`,
  monthsUpTo: (high: string) => `bis ${high}`,
  end: { returned: 'Grün kam wieder', 'coated again': 'frei wieder beschichtet', 'still clear': 'noch frei' },
  noHold: 'keine Standzeit',
  noHoldShort: {
    'hold: no clean start': 'kein sauberer Beginn',
    'hold: perhaps no clean start': 'vielleicht kein sauberer Beginn',
    'hold: coated again before a look': 'niemand sah nach',
    'hold: nobody has looked since': 'noch sah niemand nach',
    'hold: broken off before a look': 'abgebrochen',
    'hold: zone ended before a look': 'niemand sah nach',
    'hold: date not readable': 'Tag nicht bekannt',
    'hold: coating and break not in order': 'Reihenfolge nicht bekannt',
  },
  bars: (zone: string) => `Wie lange jede Beschichtung hielt: ${zone}`,
  inPassing: 'nebenbei bemerkt',
  assumed: 'sauberer Beginn angenommen',
  verified: 'sauber gesehen',
  shortening: {
    'getting shorter': (n: number, p: string) => `Wird kürzer: belegt über ${n} Standzeiten (p ${p}).`,
    'looks shorter, not proven': () => 'Sieht kürzer aus, nicht belegt.',
    'getting longer': (n: number, p: string) => `Wird länger: belegt über ${n} Standzeiten (p ${p}).`,
  },
  lastPair: {
    'shorter than the last one': 'Die letzte Standzeit war kürzer als die davor.',
    'longer than the last one': 'Die letzte Standzeit war länger als die davor.',
    overlap: '',
  },

  groups: 'Nach der Lage der Zonen',
  groupsWhat:
    'Zonen, die gleich liegen, zusammen. Bekannt ist von jeder Standzeit eine Zeitspanne; deshalb hat die Kurve Stufen und Strecken, auf denen sie irgendwo liegen kann.',
  event: {
    spot: 'nach Kontrollblicken: der erste hellgrüne Fleck',
    cover: (level: string) => `nach Rundgängen: Grün im Metall ab ${level}`,
  },
  groupAll: 'Die ganze Sammlung',
  groupNotSaid: 'Exposition nicht angegeben',
  facingNotSaid: 'Himmelsrichtung nicht angegeben',
  weatherNotSaid: 'Bewitterung nicht angegeben',
  median: 'Bei der Hälfte ist es wieder da nach',
  monthsFigure: (value: string) => (value === '1' ? '1 Monat' : `${value} Monaten`),
  noRange: 'Spanne nicht bekannt',
  noMedian: 'Die Zeit, nach der es bei der Hälfte wieder da ist, ist nicht bekannt',
  shapeOwn: 'nach einer Kurve mit eigener Form',
  shapeBorrowed: 'nach einer Kurve mit entliehener Form',
  smallGroups: (n: number) =>
    n === 1 ? '1 Gruppe mit weniger als drei Zonen zeigen' : `${n} Gruppen mit weniger als drei Zonen zeigen`,
  smallGroupsHide: 'Gruppen mit weniger als drei Zonen verbergen',

  curve: (group: string) => `Anteil noch frei: ${group}`,

  withAndWithout: 'Mit und ohne Ursache',
  withAndWithoutWhat: (zones: string) =>
    `Eine Ursache wurde beseitigt: ${zones}. Die Standzeiten davor und seither stehen nebeneinander; auch anderes kann sich geändert haben.`,
  removedOn: (zone: string, day: string) => `${zone} (${day})`,
  withCause: 'Mit der Ursache',
  withoutCause: 'Seit sie beseitigt ist',

  method: {
    title: 'Wie lange das Wachs hält',
    text: [
      'Eine Standzeit beginnt mit einer Beschichtung: innerhalb von zwei Wochen bei trockener Oberfläche frei gesehen, oder als frei angenommen. Wo innerhalb von zwei Wochen Grün steht, gibt es keine Standzeit.',
      'Sie endet irgendwo zwischen dem letzten freien Blick und dem ersten, der Grün sah. Wurde frei wieder beschichtet oder ist sie noch frei, ist das Ende offen. Eine übernommene Antwort, ein nasser oder unsicherer Blick und ein Besuch ohne ein Wort zum Grün belegen nichts.',
      'Je Zone ein Ereignis und nie zwei: Wo Kontrollblicke gemacht werden, der erste hellgrüne Fleck, sonst Grün im Metall ab der gesetzten Stufe.',
      'Das Beseitigen einer Ursache, das Freilegen bis aufs Metall, das Reinigen mit Strahlmitteln und das Färben brechen die Reihe ab: Standzeiten davor und danach gehören nicht zusammen.',
      'Standzeiten von Zonen, die gleich liegen, ergeben eine Kurve in Stufen (Turnbull 1976) und, wo die Likelihood ein Maximum hat, eine Weibull-Kurve. Bei zu wenigen Enden wird ihre Form von der ganzen Sammlung entliehen, und das wird gesagt. Die Spannen entstehen, indem ganze Zonen neu gezogen werden.',
      'Als kürzer werdend gelten Standzeiten nur nach einem Test über alle Paare, die sich nicht überschneiden, bei fünf oder mehr Standzeiten.',
      'Wieder wachsen bis: der Tag, an dem die Wahrscheinlichkeit der Rückkehr die gesetzte Stufe erreicht, wenn die Zone beim letzten Blick frei war. Nächster Kontrollblick: der Tag, an dem Ja und Nein möglichst gleich wahrscheinlich sind, verschoben auf den Wochentag des Rundwegs.',
    ],
  },
  rules: 'Was zählt',
  rulesWhat:
    'Wo keine Kontrollblicke gemacht werden, gilt Grün ab dieser Bedeckung in einem Rundgang als wieder da. Die nächste Beschichtung ist fällig, wenn die Wahrscheinlichkeit dafür den zweiten Wert erreicht.',
  level: 'Grün gilt als wieder da ab',
  levelHint: 'Anteil der Zone, im Metall. Der Wert dieses Projekts ist 3 %.',
  chance: 'Zu hohe Wahrscheinlichkeit der Rückkehr',
  chanceHint: 'Der Wert dieses Projekts ist 25 %.',
  percent: '%',
  inForce: (level: string, chance: string) =>
    `Grün gilt als wieder da ab ${level}; die nächste Beschichtung ist fällig bei einer Wahrscheinlichkeit von ${chance}.`,
  version: (n: number) => `Version ${n}, von dieser Sammlung gesetzt.`,
  projects: 'Dies sind die Werte des Projekts.',
  change: 'Diese beiden ändern',
  keep: 'Speichern',
  stop: 'Abbrechen',
  reset: 'Zurück zu den Werten des Projekts',
  kept: (n: number) => `Als Version ${n} gespeichert. Die Standzeiten werden neu berechnet.`,
  notANumber: 'Geben Sie beide als Prozentzahlen ein.',
  readingOnly: 'Dieser Tab liest nur. Ändern Sie sie im anderen.',
};
