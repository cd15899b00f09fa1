import type { thenAndNow as english } from '../en/thenAndNow';
import { unitOf } from '../format';
import type { Same } from '../tongue';

const findings = (n: number): string => (n === 1 ? '1 Befund' : `${n} Befunde`);
const zones = (n: number): string => (n === 1 ? '1 Zone' : `${n} Zonen`);

export const thenAndNow: Same<typeof english> = {
  title: 'Damals und heute',
  lead: 'Dieser Rundgang gegen einen früheren: was sich verändert hat, was nicht, und wie sicher Sie sein können.',
  thenHead: 'Damals',
  now: 'Heute',
  chooseThen: 'Damals: der frühere Rundgang',
  chooseNow: 'Heute: der spätere Rundgang',
  reading: 'Die beiden Rundgänge werden gelesen …',

  noRounds: 'Zu dieser Skulptur gibt es noch keinen Rundgang. „Damals und heute“ braucht zwei.',
  oneRound: 'Bisher gibt es einen Rundgang. „Damals und heute“ spricht nach dem nächsten.',
  startRound: 'Rundgang beginnen',
  sameRound: 'Damals und heute sind derselbe Rundgang. Wählen Sie zwei verschiedene.',
  notFound: 'Einer dieser beiden Rundgänge ist nicht auf diesem Gerät. Wählen Sie einen anderen.',
  sculptureNotFound: 'Diese Skulptur ist nicht auf diesem Gerät.',

  notAlike: 'Diese beiden Rundgänge sind ungleich',
  notAlikeWhat: 'Unterschiede unten können daher kommen, wie und wann Sie hingesehen haben, nicht von der Bronze.',
  alike: 'Diese beiden Rundgänge sind von derselben Art und im selben Oberflächenzustand, also vergleichbar.',

  verdict: {
    worse: 'Schlechter',
    better: 'Besser',
    'no sure change': 'Keine sichere Veränderung',
    carried: 'Übernommen, nicht neu beurteilt',
    'not comparable': 'Nicht vergleichbar',
  },
  clearlyVerdict: (verdict: string) => `Deutlich ${verdict.toLowerCase()}`,
  alone: 'Für sich allein, könnte Zufall sein',
  named: {
    new: 'Neu',
    gone: 'Verschwunden',
    severity: 'Andere Schwere',
    activity: 'Andere Aktivität',
    count: 'Andere Anzahl',
  },
  namedFrom: (what: string, from: string, to: string) => `${what}: damals ${from}, heute ${to}`,
  origins: { dirt: 'für Schmutz gehalten', stain: 'Fleck von oben' },

  headline: 'Kurz gesagt',
  counts: {
    worse: (n: number) => `${findings(n)} schlechter`,
    better: (n: number) => `${findings(n)} besser`,
    'no sure change': (n: number) => `${n} ohne sichere Veränderung`,
    carried: (n: number) => `${n} übernommen, nicht neu beurteilt`,
    'not comparable': (n: number) => `${n} nicht vergleichbar`,
  },
  nothingToCompare: 'In diesen beiden Rundgängen gibt es nichts, was sich vergleichen lässt.',
  zonesBoth: (both: number, all: number) =>
    both === all
      ? all === 1
        ? 'Verglichen über die eine Zone: Sie wurde beide Male angesehen.'
        : `Verglichen über alle ${all} Zonen: Jede wurde beide Male angesehen.`
      : both === 1
        ? `Verglichen über die eine von ${all} Zonen, die beide Male angesehen wurde.`
        : `Verglichen über die ${both} von ${all} Zonen, die beide Male angesehen wurden.`,
  index: 'Zustandsindex',
  activeArea: 'Aktive Fläche',
  active: { green: 'Grün', bare: 'Blankes Metall', scale: 'Kalkbelag' },

  growth: 'Welche Zonen die Veränderung tragen',
  growthWhat: `Was jede Zone zur Veränderung der aktiven Fläche beiträgt, in ${unitOf('area')}.`,
  growthBoth: `Was jede Zone zur Veränderung der aktiven Fläche beiträgt, in ${unitOf('area')}. Balken nach rechts: gewachsen; offene Balken nach links: geschrumpft.`,
  difference: 'Veränderung',
  growthNone: 'In den Zonen, die beide Male angesehen wurden, hat sich keine aktive Fläche verändert.',
  grewBy: (m2: string) => `gewachsen um ${m2}`,
  shrankBy: (m2: string) => `geschrumpft um ${m2}`,

  sure: 'Wie sicher ist diese Seite?',
  falseOnes: (comparisons: number, expected: string) =>
    comparisons === 1
      ? `Auf dieser Seite steht ein Vergleich. Allein durch Zufall wären von solchen Aussagen etwa ${expected} falsch.`
      : `Auf dieser Seite stehen ${comparisons} Vergleiche. Allein durch Zufall sähen davon etwa ${expected} verändert aus, obwohl nichts geschah.`,
  aloneWhat:
    'Eine Veränderung mit dem Vermerk „Für sich allein, könnte Zufall sein“ hielt nicht stand, als alle Vergleiche zusammen gewogen wurden. Sehen Sie noch einmal nach, bevor Sie danach handeln.',
  smallest: (from: string, down: string, up: string) =>
    `Der kleinste Unterschied, der hier als echt gilt: von ${from} % hinab auf ${down} oder hinauf auf ${up}.`,
  smallestDown: (from: string, down: string) =>
    `Der kleinste Unterschied, der hier als echt gilt: von ${from} % hinab auf ${down}.`,
  smallestUp: (from: string, up: string) =>
    `Der kleinste Unterschied, der hier als echt gilt: von ${from} % hinauf auf ${up}.`,

  smallestIndex: (points: string) => `Der kleinste Unterschied, der hier als echt gilt: ${points} Punkte.`,
  smallestArea: (m2: string) => `Der kleinste Unterschied, der hier als echt gilt: ${m2}.`,
  since: 'Vergleichen mit',
  sinceFirst: 'Seit dem ersten Rundgang',
  sinceLast: 'Seit dem letzten Rundgang',
  longView: 'Auf längere Sicht',
  longViewLead:
    'Was die Rundgänge einer Art zusammen zeigen, und was als Nächstes kommt, wenn die Pflege weitergeht wie bisher.',

  changed: 'Was sich verändert hat, Zone für Zone',
  changedNone: 'Zwischen diesen beiden Rundgängen hat sich kein Befund sicher verändert.',
  unchangedFold: (n: number, inZones: number) => `${findings(n)} ohne sichere Veränderung in ${zones(inZones)} zeigen`,
  unchangedHide: 'Verbergen, was sich nicht sicher verändert hat',
  unchanged: 'Keine sichere Veränderung, übernommen oder nicht vergleichbar',

  zone: 'Zone',
  zoneLetter: (letter: string) => `Zone ${letter}: `,
  zoneNamed: (letter: string, name: string) => `Zone ${letter}, ${name}`,
  roundNamed: (day: string) => `Rundgang vom ${day}`,
  sort: 'Art',
  noneSeen: 'nichts',
  finding: 'Befund',
  verdictHead: 'Urteil',
  nothingThere: 'ohne Befund',
  notLooked: 'nicht angesehen',
  there: 'vorhanden',
  carriedShort: 'übernommen',
  carriedSeen: (seen: string) => `übernommen: ${seen}`,
  between: 'Zwischen den beiden Rundgängen getan',
  betweenNone: 'Zwischen diesen beiden Rundgängen steht nichts im Logbuch.',
  doneOn: (what: string, day: string) => `${what}, ${day}`,
  perhaps: '(vielleicht dazwischen: Das Datum ist nicht genau)',
  breaks: '(seither ist die Oberfläche eine andere)',
  notByItself: 'Die Veränderung steht neben dem, was getan wurde. Sie sagt nicht, wodurch sie entstand.',
  zoneIndex: (then: string, now: string) => `Zonenindex damals ${then}, heute ${now}`,
  withRange: (value: string, range: string) => `${value} (${range})`,
};
