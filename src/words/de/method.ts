import type { method as english } from '../en/method';
import type { Same } from '../tongue';

export const method: Same<typeof english> = {
  title: 'Wie wird das berechnet?',
  lead: 'Keine veröffentlichte Norm gibt einen Index für Bronze im Freien. Die Skala hier ist die eigene dieses Projekts, aus veröffentlichten Teilen gebaut. Jede Zeile unten ist die Zeile, mit der gerechnet wird.',
  version: (version: string) => `Skala ${version}`,
  ownScale:
    'Unsere Schwellen, nicht die einer Norm. Ein Ergebnis nennt die Version der Skala, mit der es berechnet wurde.',
  ownVersion: (version: number, n: number) =>
    `Diese Sammlung hat eigene Zahlen: Version ${version}, ${n === 1 ? '1 Gefährdung' : `${n} Gefährdungen`} von Hand gesetzt.`,
  noOwnVersion: 'Diese Sammlung verwendet die Zahlen des Projekts.',
  result: 'Die Schritte, ausgerechnet',
  exampleZone: 'Die Beispielzone',
  percent: (label: string) => `${label} %`,
  withRange: (value: string, range: string) => `${value} (${range})`,
  rangeIs: (value: string, range: string) =>
    `Zonenindex ${value} (${range}): Die Spanne kommt allein aus der Bedeckung.`,
  oneStep: (severity: string, value: string) => `Eine Stufe schlechter, ${severity}, und es wären ${value}.`,
  coverageWhy: 'Der Bereich der Stufe und die Unsicherheit des Auges, bei 90 %.',
  stainWhy: 'Ein Fleck von oben nimmt die Gefährdung eines Flecks an, gleich welcher Art er ist.',
  product: (parts: readonly string[], extent: string) => `${[...parts, extent].join(' × ')}`,
  indexProduct: (loss: string) => `100 × (1 − ${loss})`,
  print: 'Diese Seite drucken',
  contents: 'Auf dieser Seite',
  contentsHide: 'Liste der Überschriften verbergen',

  example: 'Zum Ausprobieren: ein Befund, Schritt für Schritt',
  exampleWhat: 'Ändern Sie den Befund. Hier wird gerechnet wie bei Ihren Rundgängen.',
  kind: 'Befundart',
  coverage: 'Bedeckung',
  count: 'Anzahl',
  origin: 'Herkunft',
  severity: 'Schwere',
  activity: 'Aktivität',
  step: 'Schritt',
  figure: 'Wert',
  stepWhy: 'Woher er kommt',
  steps: {
    coverage: 'Bedeckung, mit der Spanne, die Leiter und Auge erlauben',
    extent: 'Ausdehnung',
    hazard: 'Gefährdung der Art',
    severity: 'Schwere',
    activity: 'Aktivität',
    loss: 'Abzug: Gefährdung × Schwere × Aktivität × Ausdehnung, unter 0,98 gehalten',
    index: 'Zonenindex: 100 × (1 − Abzug), über alle Befunde multipliziert',
  },
  extentWhy: {
    area: 'Die Quadratwurzel der Bedeckung: Schon das erste Prozent sagt, dass der Schutz fort ist.',
    count: 'Nach Anzahl: eins 0,6, zwei bis fünf 0,8, mehr 1.',
    length: 'Nach Länge oder Vorhandensein: 1.',
    presence: 'Nach Länge oder Vorhandensein: 1.',
  },
  unscored: 'Dieser Befund zieht nichts ab.',
  stopWord:
    'Das ist ein Stoppbegriff. Erfassen, fotografieren, diese Zone noch nicht waschen oder wachsen. Fragen Sie den Restaurator.',

  kinds: 'Befundarten und ihre Gefährdungen',
  kindsWhat:
    'Die Gefährdung reicht von 0,05 (nur das Aussehen) bis 1 (Metall auf dem Spiel). Diese Zahlen sind das eigene Urteil dieses Projekts, jede mit ihrem Grund. Gefahr für Personen steckt nicht darin: Sie steht über jeder Liste.',
  group: {
    green: 'Grün',
    dark: 'Dunkel',
    bare: 'Blank',
    white: 'Weiß',
    coating: 'Beschichtung',
    metal: 'Metall',
    iron: 'Eisen',
    water: 'Wasser',
    deposit: 'Auflagen',
    life: 'Bewuchs',
    insert: 'Einlage',
    base: 'Sockel',
  },
  measure: { area: 'nach Fläche', count: 'nach Anzahl', length: 'nach Länge', presence: 'nach Vorhandensein' },
  columns: { kind: 'Art', measure: 'Gemessen', hazard: 'Gefährdung', why: 'Warum' },
  own: (project: string) => `Projekt: ${project}`,
  stop: 'Stoppbegriff',
  stopFirst: 'beim ersten Mal Stoppbegriff',
  person: 'Gefahrenmeldung',

  change: 'Gefährdungen für diese Sammlung ändern',
  changeWhat:
    'Ihre Zahlen gelten nur für diese Sammlung. Jede Änderung erhöht die Version; frühere Papiere behalten die Version, die sie nennen.',
  stopChange: 'Abbrechen',
  hazardOf: (kind: string) => `Gefährdung: ${kind}`,
  lower: (kind: string) => `Gefährdung senken: ${kind}`,
  raise: (kind: string) => `Gefährdung erhöhen: ${kind}`,
  actionLevel: 'Handlungsschwelle',
  actionLevelWhat: 'Der Zonenindex, unter dem etwas zu tun ist. Das Projekt beginnt mit 75.',
  keep: (version: number) => `Als Version ${version} speichern`,
  kept: (version: number) => `Als Version ${version} gespeichert. Rückgängig nimmt sie zurück.`,
  reset: 'Zurück zu den Zahlen des Projekts',
  resetDone: (version: number) => `Die Zahlen des Projekts gelten wieder, als Version ${version}.`,
  unchangedYet: 'Noch ist nichts geändert.',
  changedCount: (n: number) => (n === 1 ? '1 Zahl geändert' : `${n} Zahlen geändert`),
  levelOutOfRange: 'Geben Sie eine Zahl von 0 bis 100 ein.',
  readingOnly: 'Dieser Tab liest nur. Ändern Sie die Zahlen in dem Tab, der schreibt.',

  ladder: 'Bedeckungsleiter',
  ladderWhat:
    'Jede Stufe steht für einen Bereich, und die Bereiche schließen aneinander an. Die Stufe ist, was Sie berühren; die Rechnung trägt den Bereich als Unsicherheit mit.',
  ladderColumns: { step: 'Stufe', from: 'Von', to: 'Bis', value: 'Zählt als' },
  errors: 'Unsicherheit des Auges',
  errorsWhat:
    'Wie weit ein Urteil nach Augenmaß danebenliegen kann, auf der Logit-Skala. Gewählt innerhalb der veröffentlichten Beobachterfehler.',
  errorColumns: { what: 'Was', value: 'Wert', source: 'Quelle' },
  weights: 'Schwere, Aktivität, Anzahl, Herkunft',
  takes: 'Nimmt an',
  takesHazard: (hazard: 'none' | 'stain' | 'kind', stain: string) =>
    ({ none: 'keine Gefährdung', stain: `die Gefährdung eines Flecks, ${stain}`, kind: 'die Gefährdung seiner Art' })[
      hazard
    ],
  judgedHow: 'Wie eine Bedeckung beurteilt wurde, und ihre eigene Unsicherheit',
  asReported: 'wie angegeben',
  constants: 'Andere Zahlen, auf denen die Rechnung beruht',
  severityTable: 'Schwere',
  activityTable: 'Aktivität',
  factor: 'Faktor',
  meaning: 'Bedeutung',
  name: 'Name',

  zoneRule: 'Von den Befunden zur Zone',
  zoneRuleText: [
    'Abzug eines Befunds = Gefährdung × Schwere × Aktivität × Ausdehnung, unter 0,98 gehalten.',
    'Zonenindex = 100 × Produkt aus (1 − Abzug) über ihre Befunde. 100 heißt: angesehen, und nichts zieht etwas ab.',
    'Schmutz zieht nichts ab und wird nach dem Waschen erneut gefragt. Ein Fleck von oben nimmt die Gefährdung eines Flecks an und verweist auf die Zone, aus der er kommt.',
    'Die Spanne neben einem Index (90 %) kommt allein aus der Bedeckung.',
    'Eine nicht angesehene oder aus einem früheren Rundgang übernommene Zone hat keinen eigenen Index. Er wird nie ergänzt.',
  ],
  sculptureRule: 'Von den Zonen zur Skulptur',
  sculptureRuleText: [
    'Das Mittel der Zonenindizes, gewichtet nach Fläche und nach dem Gewicht neben der Fläche, über die in diesem Rundgang angesehenen Zonen.',
    'Daneben stehen stets der Anteil der gesehenen Fläche, der Index, wenn die nicht gesehenen Zonen so gut wie die beste oder so schlecht wie die schlechteste wären, und die schwächste Zone.',
  ],

  classes: 'Klassen, nach der Regel vorgeschlagen',
  classesWhat:
    'Die Begriffe folgen EN 16096; die Regeln sind die eigenen dieses Projekts. Eine namentlich genannte Person setzt eine Klasse und darf jede davon überstimmen.',
  classColumns: { class: 'Klasse', means: 'Bedeutet', rule: 'Vorgeschlagen, wenn' },
  classNames: {
    condition: 'Zustandsklasse',
    urgency: 'Dringlichkeitsklasse',
    recommendation: 'Empfehlungsklasse',
  },
  classRules: (n: {
    readonly cc1: string;
    readonly cc2: string;
    readonly stake: string;
    readonly active: string;
    readonly level: string;
    readonly share: string;
  }): Readonly<Record<'condition' | 'urgency' | 'recommendation', readonly string[]>> => ({
    condition: [
      'Angesehen, ohne Befund.',
      `Zonenindex ${n.cc1} oder mehr.`,
      `Zonenindex von ${n.cc2} bis unter ${n.cc1}; oder ein Stoppbegriff. Ein ganzes Werk ist höchstens eine Klasse besser als seine schwächste Zone.`,
      `Zonenindex unter ${n.cc2}; oder ein schwerer, aktiver Befund im Metall mit einer Gefährdung von ${n.stake} oder mehr.`,
    ],
    urgency: [
      'Nichts drängt.',
      `Ein anderer aktiver Befund im Metall auf mehr als ${n.active} % der Zone; Wasser, das als Film läuft oder benetzt; ein Stoppbegriff; eine Art, deren Zeile es so sagt.`,
      `Zonenindex unter der Handlungsschwelle von ${n.level}; Grün im Metall seit dem letzten vergleichbaren Rundgang deutlich mehr geworden; eine Art, deren Zeile es so sagt.`,
      'Jemand könnte verletzt werden: Eine Gefahrenmeldung ist offen oder sollte es sein; eine Art, deren Zeile es so sagt.',
    ],
    recommendation: [
      'Nichts verlangt mehr als Hinsehen.',
      'Eine Art, die Waschen und Wachsen verlangt; Schmutz, der zu waschen und erneut anzusehen ist; Wasser, das als Film läuft oder benetzt.',
      'Eine Art, die eine Prüfung oder eine Reparatur verlangt; ein schwerer, aktiver Befund im Metall.',
      `Nie nach der Regel vorgeschlagen. Wo die Anzeichen stark sind, oder auf mehr als ${n.share} % der gesehenen Fläche, sagt die App: Fragen Sie einen Restaurator, ob eine umfassende Behandlung fällig ist.`,
    ],
  }),
  beading: 'Wasser auf der Oberfläche',
  beadingProposes: (level: number) => (level > 0 ? `mindestens UC${level} und RC${level}` : 'nichts'),
  areas: 'Flächen der Zonen',
  cautions: 'Vorsichtshinweise',
  scaleItself: 'Die Skala als Ganzes',
  source: 'Quelle',
  howSure: 'Wie sicher',
  order: 'Reihenfolge des Bedarfs',
  orderText: [
    'Zuerst die Menschen: Eine offene Gefahrenmeldung steht über jeder Liste, unabhängig vom Metall.',
    'Dann die Dringlichkeitsklasse, die höhere zuerst.',
    'Dann die Last: Fläche × Gewicht × (100 − Zonenindex).',
    'Dann der niedrigere Zonenindex.',
  ],

  treatments: 'Was getan wurde, und was es abbricht',
  treatmentsWhat:
    'Nach manchen Behandlungen ist die Oberfläche eine andere. Ein Vergleich oder eine Reihe läuft nicht darüber hinweg.',
  treatmentColumns: { treatment: 'Behandlung', coats: 'Trägt Beschichtung auf', breaks: 'Bricht die Reihe ab' },
  yes: 'ja',
  no: 'nein',

  verdicts: 'Dieser Rundgang gegen einen früheren',
  verdictText: [
    'Verglichen werden Rundgänge derselben Art und desselben Oberflächenzustands. Andere werden mit einem Hinweis verglichen.',
    'Ein Unterschied wird nur genannt, wenn er über dem 1,96-Fachen seiner eigenen Unsicherheit liegt; „deutlich“, wenn er über dem Doppelten dieser Grenze liegt.',
    'Grün, blankes Metall und Kalkbelag werden in Quadratmetern verglichen; Befunde auf der Logit-Skala ihrer Bedeckung; Zonen auf dem Logarithmus ihres Index.',
    'Auch „ohne Befund“ hat eine Unsicherheit: Eine neue Spur kann zuvor übersehen worden sein.',
    'Viele Vergleiche bringen einige falsche mit sich. Was nicht standhält, wenn alle zusammen gewogen werden (Benjamini-Hochberg bei 10 %), trägt den Vermerk „Für sich allein, könnte Zufall sein“.',
    'Übernommene Antworten belegen nichts und bleiben aus jeder Rechnung heraus.',
  ],

  sources: 'Quellen, und wie sicher sie sind',
  sourcesWhat: 'Worauf jede Zahl beruht. Die meisten sind die eigene Wahl dieses Projekts und sagen das auch.',
  sure: {
    seen: 'Seite oder Daten gesehen',
    abstract: 'nur Zusammenfassung',
    'from memory': 'aus dem Gedächtnis',
    'common practice, no source': 'gängige Praxis, ohne Quelle',
    'own choice': 'eigene Wahl dieses Projekts',
  },
  usedFor: 'Verwendet für',
};
