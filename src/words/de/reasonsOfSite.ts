import type { reasonsOfSite as english } from '../en/reasonsOfSite';
import type { Same } from '../tongue';
import { wordOf } from './codes';

const inputs: Readonly<Record<string, string>> = {
  temperature: 'Die Temperatur',
  humidity: 'Die relative Luftfeuchte',
  so2: 'Die Ablagerung von Schwefeldioxid',
  chloride: 'Die Ablagerung von Chlorid',
};

/** What has to be said beside a figure of how corrosive the air is. */
export const reasonsOfSite: Same<typeof english> = {
  'site: outside the range': (s) =>
    `${inputs[s.text('what')] ?? s.text('what')}, ${s.number('value', 1)}, liegt außerhalb des Bereichs, aus dem die Funktion abgeleitet wurde (${s.number('low', 1)} bis ${s.number('high', 1)}). Die Rate ist darüber hinaus fortgeführt und weniger sicher, als die Spanne sagt.`,
  'site: two columns, two categories': (s) =>
    `Nach der Dicke liegt ${wordOf(s.text('metal'))} in ${s.text('byThickness') || 'keiner Kategorie'}, nach der Masse in ${s.text('byMass') || 'keiner Kategorie'}: Die beiden Spalten der Tabelle in der Norm sind verschieden gerundet. Diese App richtet sich nach der Dicke.`,
  'site: beyond the table': (s) =>
    `Die Rate (${wordOf(s.text('metal'))}), ${s.number('rate', 1)} µm im Jahr, liegt über der letzten Grenze der Tabelle (${s.number('most', 0)}): Sie hat keine Kategorie.`,
  'site: straight line beyond': (s) =>
    `Nach ${s.number('years', 0)} Jahren ist sie als Gerade mit der dortigen Steigung fortgeführt.`,
  'site: clean coupons': () => 'Das gilt für saubere Metallproben im Freien, nicht für ein gewachstes Kunstwerk.',
};
