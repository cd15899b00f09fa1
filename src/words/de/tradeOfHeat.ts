import type { NamesOfTrade } from '../../engine/trade';

const named = (rows: Readonly<Record<string, string>>): NamesOfTrade[string] =>
  Object.fromEntries(Object.entries(rows).map(([id, name]) => [id, { name }]));

/** Hot work, and what heat does to metal and inserts. */
export const tradeOfHeat: NamesOfTrade = {
  hotWorkRules: named({
    'clear zone': 'Frei von allem Brennbaren, oder abgeschirmt',
    'watch at least': 'Brandwache nach der Arbeit, mindestens',
    'watch since 2019': 'Brandwache nach der Arbeit, neuere Ausgabe',
    'watch longest': 'Nachschau über die Wache hinaus, wo der Erlaubnisschein sie verlangt, bis zu',
  }),
  hotChecks: named({
    permit: 'Der Erlaubnisschein ist hier, unterschrieben und für heute',
    'clear zone': 'Der Freibereich ist abgegangen: nichts Brennbares, kein Laub, keine Lappen, kein Gas darunter',
    openings: 'In Öffnungen, Hohlräume und das Innere des Werks gesehen: Wärme geht durch Metall',
    extinguisher: 'Löscher und Wasser zur Hand, und jemand, der damit umgehen kann',
    watcher: 'Die Brandwache hat keine andere Aufgabe und weiß, wen sie ruft',
    'no wax': 'Kein Wachs, Lösemittel oder Lappen im Freibereich',
    people: 'Besucher fern, Wege gesperrt',
    breath: 'Masken nach den Sicherheitsdatenblättern: heiße Nitrate geben braune Dämpfe ab',
    inserts: 'Einlagen ausgebaut oder vor Hitze geschützt, wie der zuständige Restaurator es gesagt hat',
  }),
  exposureLimits: {
    'nitrogen dioxide': {
      agent: 'Stickstoffdioxid',
      why: 'brauner Dampf heißer Nitrate',
      pel: '5 ppm (9 mg/m³), nie darüber',
      rel: '1 ppm (1,8 mg/m³), 15 min',
      idlh: '13 ppm; 20 ppm im Dokument von 1994',
    },
    'nitric acid': {
      agent: 'Salpetersäure',
      why: 'in manchen Patinierlösungen',
      pel: '2 ppm (5 mg/m³), 8 h',
      rel: '2 ppm, 8 h; 4 ppm (10 mg/m³), 15 min',
      idlh: '25 ppm',
    },
    'copper fume': {
      agent: 'Kupferrauch',
      why: 'zu stark erhitztes Metall',
      pel: '0,1 mg/m³',
      rel: '0,1 mg/m³',
      idlh: '',
    },
    'copper dust': {
      agent: 'Kupferstaub und -nebel',
      why: 'Strahlen, Bürsten, Schleifen',
      pel: '1 mg/m³',
      rel: '1 mg/m³',
      idlh: '100 mg/m³',
    },
    silica: {
      agent: 'Kristallines Siliciumdioxid (Quarz), alveolengängig',
      why: 'Strahlen neben Stein, verbliebener Gusskern',
      pel: '50 µg/m³, 8 h; Handeln ab 25',
      rel: '50 µg/m³',
      idlh: '25 mg/m³ Cristobalit, 50 Quarz',
    },
    propane: {
      agent: 'Propan',
      why: 'Brenngas, schwerer als Luft',
      pel: '1000 ppm',
      rel: '1000 ppm',
      idlh: '2100 ppm (10 % der unteren Explosionsgrenze)',
    },
  },
  beddings: {
    resin: { name: 'Harz', caution: 'erweicht oder brennt weit unter der Wärme des Patinierens' },
    lead: { name: 'Blei', caution: 'schmilzt bei 327 °C; sein Rauch ist giftig' },
    putty: { name: 'Kitt', caution: 'trocknet aus, reißt, kann rauchen' },
    gasket: { name: 'Dichtung', caution: 'Gummi verhärtet oder brennt' },
    mortar: { name: 'Mörtel oder Gips' },
    'not known': { name: 'Nicht bekannt', caution: 'wie die empfindlichste behandeln' },
  },
  glassData: named({
    float: 'Floatglas, unbeschädigt, nach EN 572-1',
    'data sheet': 'Spannungsarm gekühltes Kalk-Natron-Glas, Datenblatt',
    weathered: 'Verwitterte Kante',
  }),
  glassKinds: named({
    unknown: 'Nicht bekannt',
    cast: 'Gegossen, verschmolzen oder geblasen',
    damaged: 'Gesprungen, abgeplatzt oder verwittert',
    annealed: 'Flach, spannungsarm gekühlt, unbeschädigt',
    toughened: 'Flach, vorgespannt, unbeschädigt',
  }),
  heatOfMetals: named({ 'tin bronze': 'Zinnbronze', 'silicon bronze': 'Siliziumbronze', brass: 'Messing' }),
};
