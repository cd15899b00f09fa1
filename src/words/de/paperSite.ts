import type { paperSite as english } from '../en/paperSite';
import type { Same } from '../tongue';

export const paperSite: Same<typeof english> = {
  title: 'Baustellenkarte',
  reader: 'alle, die vor Ort arbeiten oder helfen',
  heading: (work: string) => `Vor Ort: ${work}`,
  lead: 'Zuerst lesen, dann anfassen. Diese Karte hängt dort, wo alle vorbeikommen.',

  never: 'Verboten ist',
  untouched: (zone: string, kinds: string) =>
    `Zone ${zone}: nicht waschen, nicht wachsen, nicht berühren. Dort gesehen: ${kinds}. Zuerst den Restaurator fragen.`,
  usual: 'Die übliche Liste; für dieses Werk hat es noch niemand gesagt.',
  inserts: 'Einlagen',
  insertsNone: 'Einlagen sind nicht verzeichnet. Wer eine findet, hört auf und sagt es.',
  columns: {
    insert: 'Einlage',
    removable: 'Herauszunehmen? Gebettet in',
    kept: 'Vor Hitze geschützt durch',
    limit: 'Grenze',
    watcher: 'Überwacht von',
    state: 'Bekannte Schäden',
  },
  noLimit: 'keine gesetzt: keine Hitze in der Nähe',
  comesOut: 'keine gesetzt: wird vor jeder Hitze herausgenommen',
  noLimitLong: 'Keine Grenze von einer benannten Fachperson gesetzt',
  removableShort: { yes: 'ja', no: 'nein', 'not known': 'nicht bekannt' },
  limit: (limits: readonly string[], who: string, day: string) =>
    `${limits.join(', ')}${who && `; gesetzt von: ${who}${day && `, ${day}`}`}`,
  limitMost: (degrees: string) => `höchstens ${degrees}`,
  limitApart: (kelvin: string) => `höchstens ${kelvin} Unterschied zwischen zwei Seiten`,
  limitRate: (kelvin: string) => `höchstens ${kelvin} in einer Minute`,
  outFrom: (from: string, to: string) => (to === '' ? `ausgebaut seit ${from}` : `ausgebaut vom ${from} bis ${to}`),
  nobodyKnows:
    'Vom Schreibtisch aus kann niemand sagen, wie nahe eine Flamme an Glas, Email oder Stein kommen darf. Was nicht als hitzefest bekannt ist, wird vorher herausgenommen, oder die Fachperson dafür sagt Grenze und Weg.',

  stop: 'Aufhören, alles lassen, wie es ist, und anrufen, sobald eines davon eintritt',
  stopWho:
    'Jede Person darf die Arbeit anhalten. Ob es weitergeht, entscheiden Restaurator und kuratorische Leitung gemeinsam.',
  contacts: 'Wen Sie anrufen',
  contactsLabel: 'Wen man anruft, mit Nummern',
  contactsHint: 'Kuratorische Leitung, Restaurator, Sicherheit vor Ort, Feuerwehr, Erste Hilfe. Je eine Zeile.',
  contactsRoom: 'Name und Nummer',

  site: 'Wasser, Strom, Wege',
  water: 'Wasser',
  power: 'Strom',
  closures: 'Gesperrt',
  ground: 'Boden',
  bears: 'Trägt Maschinen',
  rescue: 'Rettung aus der Höhe',
  competent: 'Befähigte Person',
  hours: 'Arbeitszeiten',
  hoursLabel: 'Arbeitszeiten',
  hoursHint: 'Tage, Stunden, Ruhezeiten, wann Publikum da ist.',
  waste: 'Abwasser und Abfall',
  wasteLabel: 'Abwasser und Abfall',
  wasteHint: 'Wohin das Wasser geht, was aufgefangen wird, wer es wegbringt.',

  hot: 'Heißarbeit: bevor etwas entzündet wird',
  hotPermit: (permit: string, who: string) => `Erlaubnisschein: ${permit}. Erteilt von: ${who}.`,
  hotClear: (metres: string) => `Ringsum frei oder abgeschirmt: ${metres}.`,
  hotWatch: (minutes: string) =>
    `Brandwache nach der letzten Flamme: ${minutes} Minuten, durch jemanden, der nichts anderes tut.`,
  hotWatcher: (who: string) => `Brandwache: ${who}.`,
  hotNone: 'Kein Tag mit Heißarbeit ist festgehalten. Ohne Erlaubnisschein für den Tag wird keine Flamme entzündet.',
  hotRules:
    'Veröffentlichte Regeln anderer Länder stehen hier als das Mindeste. Der Erlaubnisschein, die Brandschutzbehörde und die Versicherung entscheiden.',
  hotRoom: ['Erlaubnisschein von heute', 'Brandwache heute'],
  ruleColumns: { rule: 'Regel', asks: 'Verlangt', from: 'Quelle' },
  minutes: (n: string) => `${n} min`,

  access: {
    height: 'Höhe des Werks',
    plinth: 'Steht auf',
    equipment: 'Erreicht über',
    reach: 'Eine Person muss gehoben werden um',
    outreach: 'Ausladung über Wasser oder Pflanzung',
    ground: 'Boden',
    bears: 'Trägt der Boden Maschinen?',
    waterDepth: 'Wassertiefe',
    closures: 'Zu sperren oder abzulassen',
    power: 'Strom',
    water: 'Wasser',
    permits: 'Genehmigungen',
    competent: 'Befähigte Person',
    days: 'Tage vor Ort',
    rescue: 'Rettung aus der Höhe',
    note: 'Außerdem',
  },
  bearsWords: { yes: 'ja', no: 'nein', 'not known': 'nicht bekannt: zu klären, bevor Schweres kommt' },
  reachHow: (standing: string) => `Sockel und Werk, weniger ${standing}, die man stehend erreicht`,
  days: (asked: string, withWeather: string) =>
    `${asked}; ${withWeather} mit Ausfall durch Wetter (drei Zehntel mehr, eigene Wahl)`,
  accessNone: 'Für dieses Werk ist noch kein Zugangsblatt geschrieben.',
  accessAsk: 'Wie es sicher erreicht wird, sagt eine befähigte Person vor Ort; das örtliche Recht entscheidet.',

  lacks: {
    contacts: 'wen man anruft',
    access: 'ein Zugangsblatt',
    methods: 'eine eigene Liste dessen, was an diesem Werk nicht getan werden darf',
    limits: (insert: string) => `eine Grenze oder ein Weg, ${insert} vor Hitze zu schützen`,
    hours: 'Arbeitszeiten',
  },
};
