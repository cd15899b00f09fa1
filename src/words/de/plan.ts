import type { plan as english } from '../en/plan';
import type { Same } from '../tongue';

const some = (n: number, one: string, many: string, none: string): string =>
  n === 0 ? none : n === 1 ? `1 ${one}.` : `${n} ${many}.`;

export const plan: Same<typeof english> = {
  title: 'Planung',
  lead: 'Was fällig ist, was das Jahr bringt, was es kostet. Sie planen, bezahlen und beobachten; was am Metall getan wird, sagt ein Restaurator.',
  now: 'Jetzt',
  works: 'Werk für Werk',
  worksNone: 'Noch keine Skulptur. Legen Sie zuerst eine an.',
  toSculptures: 'Zu den Skulpturen',
  ofYear: 'Das Jahr',
  money: 'Geld und Entscheidungen',
  store: 'Dinge und Menschen',
  due: 'Was fällig ist',
  dueWhat: 'Alles, was ein Datum hat, nach Datum und nach Rundweg.',
  dueMany: (over: number, now: number, soon: number) =>
    over + now + soon === 0
      ? 'Nichts innerhalb eines Monats.'
      : `${[over > 0 && `${over} überfällig`, now > 0 && `${now} jetzt`, soon > 0 && `${soon} innerhalb eines Monats`].filter(Boolean).join(', ')}.`,
  year: 'Jahresplan',
  yearWhat: 'Welches Werk einen Rundgang, einen Kontrollblick, ein Wachsen bekommt; Hebebühnentage; die Stunden dafür.',
  sitePlan: 'Geländeplan',
  sitePlanWhat: 'Wo die Werke stehen, und der kürzeste Weg herum.',
  packing: 'Packliste',
  packingWhat: 'Was mitzunehmen ist, nach dem, was geplant ist.',
  briefing: 'Einweisung für eine Hilfskraft',
  briefingWhat: 'Eine Seite zum Drucken.',
  closeDown: 'Winterfest machen',
  closeDownWhat: 'Entwässerung, Abdeckungen, Wasser abstellen.',
  incidents: 'Vorfälle',
  report: 'Vorfall melden',
  incidentsWhat: (open: number) => some(open, 'offen', 'offen', 'Sturm, Vandalismus, ein Stoß: jederzeit zu melden.'),
  moves: 'Umsetzungen und Leihgaben',
  movesWhat: (away: number) => some(away, 'Werk ist fort', 'Werke sind fort', 'Jedes Werk ist an seinem Platz.'),
  grounds: 'Vereinbarungen mit der Gartenpflege',
  groundsWhat: (n: number) => some(n, 'Vereinbarung', 'Vereinbarungen', 'Keine eingetragen.'),
  products: 'Mittel im Bestand',
  productsWhat: (n: number) =>
    some(n, 'Mittel', 'Mittel', 'Noch keine: Wachs, Reinigungsmittel, ihre Datenblätter und Chargen.'),
  budget: 'Budget eines Jahres',
  budgetWhat: 'Was mit einer Summe zu behandeln ist, und was liegen bleibt.',
  funds: 'Fonds',
  fundsWhat: (n: number) => some(n, 'Fonds', 'Fonds', 'Noch keiner: Geld vorhanden, zugesagt, erhofft.'),
  decisions: 'Entscheidungen',
  decisionsWhat: (n: number) =>
    some(
      n,
      'Entscheidung',
      'Entscheidungen',
      'Noch keine: was gewählt wurde, warum, und was daran etwas ändern würde.',
    ),
  rules: 'Wie mit Geld gerechnet wird',
  rulesWhat: (currency: string | undefined) =>
    currency
      ? `In ${currency}; Zinssätze und Preissteigerung.`
      : 'Noch nicht festgelegt: Währung, Zinssätze, Preissteigerung.',
  noPlan: 'Nichts geplant.',
  campaignAt: (title: string, step: string) => `${title}: ${step}.`,
  verdictOf: (year: string, verdict: string) => `${year}: ${verdict}.`,
  verdicts: {
    hold: 'beibehalten',
    watch: 'beobachten',
    'treat locally': 'örtlich behandeln',
    'ask a conservator': 'einen Restaurator fragen',
    campaign: 'Maßnahme',
  },
  ofWork: {
    title: 'Planung dieses Werks',
    link: 'Planung',
    toWork: 'Zum Werk',
    decide: 'Entscheiden',
    care: 'Pflegen',
    prepare: 'Erreichen und schützen',
    options: 'Möglichkeiten',
    optionsWhat: (n: number) =>
      some(n, 'Möglichkeit verglichen', 'Möglichkeiten verglichen', 'Was jeder Weg kosten und bringen würde.'),
    decisions: 'Entscheidungen und Auslöser',
    decisionsWhat: (n: number) => some(n, 'Entscheidung', 'Entscheidungen', 'Noch keine.'),
    campaigns: 'Maßnahmen',
    campaignsWhat: (n: number) => some(n, 'Maßnahme', 'Maßnahmen', 'Keine: Ursachen, Angebote, Freigaben, Bericht.'),
    careDay: 'Wasch- und Wachstag',
    careDayWhat: (readings: number) =>
      some(
        readings,
        'Messung der Luft gespeichert',
        'Messungen der Luft gespeichert',
        'Beginnen oder warten, und der Eintrag des Tages.',
      ),
    season: 'Saisonprotokoll',
    seasonWhat: 'Was in einem Jahr getan wurde, zum Drucken.',
    methodSheet: 'Was getan werden darf',
    methodSheetWhat: (forbidden: number) =>
      some(forbidden, 'Verbot eingetragen', 'Verbote eingetragen', 'Noch nicht angegeben.'),
    metal: 'Metallbuch',
    metalWhat: (n: number) => some(n, 'Eintrag', 'Einträge', 'Soweit bekannt nie bis aufs Metall freigelegt.'),
    logbook: 'Logbuch',
    logbookWhat: (n: number) => some(n, 'Behandlung', 'Behandlungen', 'Noch nichts.'),
    access: 'Zugangsblatt',
    accessWhat: (there: boolean) => (there ? 'Höhe, Zugang, Boden, Sperrungen.' : 'Noch nicht geschrieben.'),
    inserts: 'Einlagen und Hitze',
    insertsWhat: (n: number) => some(n, 'Einlage', 'Einlagen', 'Keine erfasst.'),
    verdict: (year: string) => `Urteil für ${year}`,
  },
};
