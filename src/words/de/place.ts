import type { place as english } from '../en/place';
import { measure, measureNumber, unitOf } from '../format';
import type { Same } from '../tongue';

export const place: Same<typeof english> = {
  title: 'Die Luft am Ort',
  link: 'Die Luft am Ort',
  lead: 'Vier Jahresmittel sagen, wie stark die Luft hier blankes Metall angreift, nach zwei veröffentlichten Normen. Sie kennzeichnen den Ort, nicht ein Werk.',
  coupons:
    'Das gilt für saubere Metallproben aus unlegiertem Metall, die im Freien hängen. Es gilt nicht für ein gewachstes Kunstwerk, und gegossene Bronze ist kein Kupfer: Nehmen Sie es wie die Auskunft eines Nachbarn.',
  back: 'Einstellungen',

  entry: 'Die vier Werte',
  entryWhat:
    'Jahresmittel der nächsten Wetter- und Luftmessstationen. Ihre Umweltbehörde oder Ihr Wetterdienst hat sie.',
  enter: 'Die vier Werte eingeben',
  change: 'Ändern',
  keep: 'Speichern',
  stop: 'Lassen, wie es war',
  kept: 'Die Luft am Ort ist gespeichert.',
  temperature: 'Lufttemperatur',
  humidity: 'Relative Luftfeuchte',
  so2: 'Ablagerung von Schwefeldioxid',
  chloride: 'Ablagerung von Chlorid (Salz)',
  units: { temperature: unitOf('temperature'), humidity: '%', so2: 'mg/(m²·Tag)', chloride: 'mg/(m²·Tag)' },
  hints: {
    temperature: `Jahresmittel, ${measureNumber('temperature', -17.1)} bis ${measure('temperature', 28.7)} (Bereich, für den die Funktion hergeleitet wurde).`,
    humidity: 'Jahresmittel, 34 bis 93 % (Bereich, für den die Funktion hergeleitet wurde).',
    so2: 'Aus der Luft in µg/m³: etwa das 0,8-Fache davon (aus dem Gedächtnis). Saubere Landluft liegt unter 4, Städte bei 4 bis 24. Hergeleitet für 0,7 bis 150,4.',
    chloride:
      'Im Binnenland unter 3, in Meeresnähe 3 bis 60, an der Küste 60 bis 300 und mehr. Hergeleitet für 0,4 bis 760,5.',
  },
  from: 'Woher die Werte kommen',
  fromHint: 'Station, Jahre, wer sie gegeben hat.',
  notANumber: (what: string) => `${what}: Das ist keine Zahl. Schreiben Sie sie in Ziffern, zum Beispiel 9,5.`,
  none: 'Noch keine Werte. Mit vier Jahresmitteln sagt diese Seite, wie korrosiv die Luft ist.',

  classes: (so2: string, chloride: string) => `Ablagerungsklassen: Schwefeldioxid ${so2}, Chlorid ${chloride}.`,
  beyondClasses: 'über der letzten Klasse',
  result: 'Erstes Jahr auf einer sauberen Metallprobe',
  metals: { copper: 'Kupfer', 'carbon steel': 'Unlegierter Stahl', zinc: 'Zink' },
  metalFor: {
    copper: 'der Bronze am nächsten',
    'carbon steel': 'Armierungen, Bolzen, Eisen im Sockel',
    zinc: 'verzinkte Befestigungen',
  },
  metal: 'Metall',
  rate: 'µm im Jahr',
  mass: 'g/(m²·Jahr)',
  category: 'Kategorie',
  range: 'Spanne',
  categoryWord: (id: string, word: string) => `${id}, ${word}`,
  noCategory: 'über der Tabelle',
  byMass: (id: string) => `nach Masse ${id}`,
  headline: (id: string, word: string) => `Kupfer: Kategorie ${id}, ${word}.`,
  headlineOver: 'Kupfer: über der letzten Kategorie der Tabelle.',

  years: 'Über die Jahre',
  yearsWhat:
    'Von einer sauberen Kupferprobe verlorene Tiefe, µm: der Wert des ersten Jahres mal einer Potenz der Jahre, nach zwanzig eine Gerade.',
  yearsLabel: 'Von einer sauberen Kupferprobe verlorene Tiefe über fünfzig Jahre',
  year: 'Jahre',
  depth: 'Tiefe, µm',
  yearsAxis: 'Jahre',

  sources: 'Quellen',
};
