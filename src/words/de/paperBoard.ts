import type { paperBoard as english } from '../en/paperBoard';
import { list } from '../format';
import type { Same } from '../tongue';

const years = (n: string): string => (n === '1' ? 'ein Jahr' : `${n} Jahre`);

export const paperBoard: Same<typeof english> = {
  title: 'Vorlage für den Vorstand',
  reader: 'den Vorstand',
  heading: (campaign: string) => `Zur Entscheidung: ${campaign}`,
  lead: (work: string, ways: string) =>
    `Der Vorstand wird gefragt, wie ${work} von jetzt an gepflegt werden soll. Hier stehen ${ways} Möglichkeiten nebeneinander; der Anhang sagt, was jede bewirkt, welche Risiken sie birgt und woher die Zahlen kommen.`,
  leadNoWays: (work: string) =>
    `Der Vorstand wird gefragt, wie ${work} von jetzt an gepflegt werden soll. Die Möglichkeiten sind noch nicht festgehalten.`,
  noPair: 'Von diesem Werk gibt es noch keine zwei Fotos vom selben Standpunkt.',
  green: {
    name: 'Grün heute',
    how: (low: string, high: string, all: string) =>
      `${low} bis ${high} (90 %), von ${all} Oberfläche; Zone für Zone nach Augenmaß geschätzt.`,
    none: 'Noch hat niemand nachgesehen.',
  },
  change: {
    name: 'Jedes Jahr mehr',
    how: (low: string, high: string, rounds: string) =>
      `${low} bis ${high}, aus ${rounds} Rundgängen; durch Zufall nicht zu erklären.`,
    unsure: (low: string, high: string, rounds: string) =>
      `${low} bis ${high}, aus ${rounds} Rundgängen; es könnte auch Zufall sein.`,
  },
  price: {
    name: (letter: string) => `Preis der Möglichkeit ${letter}, einmalig`,
    how: (contingency: string) => `Preise wie genannt, ${contingency} für Unvorhergesehenes.`,
  },

  ways: 'Die Möglichkeiten',
  caption: (n: string, rate: string) =>
    `Kosten gleichmäßig auf ${years(n)} verteilt; gerechnet mit einem Zinssatz von ${rate} % im Jahr über dem Preisanstieg`,
  columns: {
    way: 'Möglichkeit',
    yearly: 'Kosten im Jahr',
    months: 'Gute Monate im Jahr',
    perMonth: 'Kosten eines guten Monats',
    steps: 'Was sich nicht zurücknehmen lässt',
  },
  monthsHow:
    'Ein guter Monat ist einer, in dem auch die schlechteste Zone unter dem Wert bleibt, ab dem Grün als wieder da gilt. Spannen, zwei weitere Zinssätze und die Preise: siehe Anhang.',
  steps: (count: string, size: string | undefined) =>
    count === '0'
      ? 'nichts'
      : `${count} ${size === undefined ? '' : `${size}${count === '1' ? 'r' : ''} `}${count === '1' ? 'Schritt' : 'Schritte'}`,
  sizes: { small: 'kleine', large: 'große' },
  notKnown: 'nicht bekannt',
  oneWay:
    'Nur eine Möglichkeit ist festgehalten. Wo nur eine steht, gibt es nichts zu entscheiden: Wenigstens das Weitermachen wie bisher gehört daneben.',
  noWays: 'Noch ist keine Möglichkeit festgehalten, also gibt es hier noch nichts zu entscheiden.',
  noMoney:
    'Die Unterlagen, aus denen dieses Papier stammt, enthalten keine Preise. Es sagt, was getan würde, und nichts über Geld.',

  motion: 'Der Antrag',
  motionDrafted: (m) =>
    [
      `${m.work} soll gepflegt werden wie unter „${m.title}“ beschrieben`,
      m.price && `, zu einem Preis von höchstens ${m.price}, davon ${m.contingency} für Unvorhergesehenes`,
      m.upkeep
        ? `, sobald das Geld für die Arbeit und für den Unterhalt von ${m.upkeep} im Jahr da ist`
        : ', sobald das Geld dafür da ist',
      m.causes ? ' und die Ursachen des Schadens behoben sind' : '',
      '. Über die Mittel entscheidet ein Restaurator, der die Arbeit auch beaufsichtigt',
      m.care ? `; bis dahin wird das Werk gepflegt wie bisher („${m.care}“)` : '',
      m.review ? `. Der Vorstand befasst sich am ${m.review} erneut damit.` : '.',
    ].join(''),
  motionNoWay: (work: string) =>
    `Die Möglichkeiten für ${work} sollen dem Vorstand erneut vorgelegt werden, jede mit ihrem Preis, mit dem, was sie bringt, und mit dem, was sich nicht zurücknehmen lässt.`,
  motionHint: 'So, wie darüber abgestimmt werden soll. Was jetzt hier steht, ist aus den Unterlagen zusammengestellt.',
  motionLabel: 'Wortlaut des Antrags',

  way: (letter: string) => `Möglichkeit ${letter}`,
  point: 'Punkt',
  each: 'Was jede Möglichkeit ist',
  eachCaption: 'Die Möglichkeiten, Punkt für Punkt',
  where: (letters: string) => `Zonen ${letters}`,
  whole: 'das ganze Werk',
  facts: {
    does: 'Was getan wird',
    where: 'Wo',
    who: 'Wer es tun darf',
    months: 'Gute Monate im Jahr',
    costs: 'Was bezahlt wird',
    irreversible: 'Was sich nicht zurücknehmen lässt',
    risks: 'Was schiefgehen kann',
  },
  cost: (name: string, amount: string, when: string) => `${name}: ${amount}, ${when}`,
  none: 'nichts',

  rates: 'Dasselbe bei drei Zinssätzen',
  ratesCaption: (n: string, currency: string) =>
    `Kosten im Jahr und eines guten Monats über ${years(n)}, in ${currency}, je mit ihrer Spanne`,
  yearlyAt: (rate: string) => `Im Jahr, bei ${rate} %`,
  monthlyAt: (rate: string) => `Guter Monat, bei ${rate} %`,
  range: (low: string, high: string) => `${low} bis ${high}`,
  andMore: (low: string) => `${low} und mehr`,
  ratesHow: (quote: string, estimate: string, madeUp: string) =>
    `Spannen: Ein Angebot gilt als auf ${quote} genau, eine Schätzung auf ${estimate}, ein Preis, den niemand genannt hat, auf ${madeUp}. Das sind eigene Annahmen. Preise gelten für dieses und das nächste Jahr und steigen von da an. Der Zinssatz ist, was Geld über den Preisanstieg hinaus bringt.`,
  against: (name: string) => `Was gegen ${name} spricht`,
  againstNone: 'Weder die Zahlen noch die Unterlagen sprechen dagegen.',
  whatIfCaption: (name: string, per: 'good month' | 'year', cost: string) =>
    `Was ${per === 'year' ? 'ein Jahr' : 'ein guter Monat'} von ${name} statt ${cost} kosten würde`,
  what: 'Was anders ist',
  from: 'Mindestens',
  to: 'Höchstens',
  turns: 'Dann günstiger',
  same: 'dieselbe',
  whatIfNext: (name: string, cost: string) => `Die nächstbeste ist ${name}, mit ${cost}.`,

  waiting: 'Der Preis des Wartens',
  waitingCaption: (name: string, currency: string) => `Was das Warten mit ${name} kostet, in ${currency}`,
  waits: (n: number) => (n === 1 ? 'Ein Jahr' : `${n} Jahre`),
  waitColumns: {
    wait: 'Warten',
    price: 'Preis dann',
    rise: 'Preisanstieg',
    care: 'Pflege bis dahin',
    growth: 'Mehr Grün',
    extra: 'Mehr als heute',
  },
  waitingNone: 'Keine Möglichkeit hier hat einen einmaligen Preis; der Preis des Wartens lässt sich nicht nennen.',

  causes: 'Was den Schaden nährt',
  money: 'Das Geld',
  moneyState: (inHand: string, pledged: string, hoped: string) =>
    `Vorhanden ${inHand}; zugesagt ${pledged}; erhofft ${hoped}. Das sind drei Summen und nicht eine: Eine Zusage ist noch kein Geld, und eine Hoffnung ist weniger.`,
  upkeep: (yearly: string, percent: string, endowment: string) =>
    `Der Unterhalt nach der Arbeit kostet ${yearly} im Jahr. Ein Stiftungsvermögen, von dem jedes Jahr ${percent} % ausgegeben werden dürfen, müsste ${endowment} betragen, um ihn zu tragen.`,
  noFund: 'Dafür ist kein Fonds festgehalten.',
  decided: 'Was bisher entschieden wurde',
  decidedOn: (day: string, title: string) => `${day}: ${title}`,
  chosen: (what: string) => `Gewählt: ${what}`,
  refused: (what: string, why: string) => `Verworfen: ${what}. ${why}`,
  dissent: (what: string) => `Dagegen sprach: ${what}`,
  consulted: (who: readonly string[]) => `Gefragt wurden: ${list(who)}.`,
  wires: (what: readonly string[]) => `Neu zu entscheiden ist, wenn eines hiervon eintritt: ${what.join('; ')}.`,
  lowered: (wire: string) => wire,
  review: (day: string, past: boolean) => `Wieder anzusehen ${past ? 'war' : 'ist'} es am ${day}.`,
  notDecided: 'Darüber wurde bisher nichts entschieden.',
  chair: 'Für den Vorstand',
  proposer: 'Dem Vorstand vorgelegt von',
  who: 'Ob und mit welchen Mitteln eine Oberfläche bis aufs Metall freigelegt wird und welchen Farbton sie erhält, sagt ein Restaurator, zusammen mit dem Künstler oder dem Nachlass und dem Eigentümer. Dieses Papier rechnet und entscheidet nichts.',
  lacks: {
    pair: 'zwei Fotos vom selben Standpunkt, Jahre auseinander',
    ways: 'wenigstens zwei Möglichkeiten, eine davon wie bisher',
    prices: 'Preise für wenigstens zwei Möglichkeiten',
    chosen: 'welcher Möglichkeit die Maßnahme folgt',
    round: 'ein abgeschlossener Rundgang',
    causes: 'ein Wort dazu, was den Schaden nährt',
  },
};
