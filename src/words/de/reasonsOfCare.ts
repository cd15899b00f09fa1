import { methodOf } from '../../engine/trade';
import type { reasonsOfCare as english } from '../en/reasonsOfCare';
import type { Same } from '../tongue';

/** What stands against an entry, a product or a method sheet, and where their figures come from. */
export const reasonsOfCare: Same<typeof english> = {
  'care: area said': () => 'Die Fläche ist die, die bei der Arbeit aufgeschrieben wurde.',
  'care: area of the zones': (s) =>
    `Die ganze Fläche von ${s.times('zones', 'Zone', 'Zonen')}; wie viel davon abgenommen wurde, ist nicht aufgeschrieben.`,
  'care: rate from the log': (s) =>
    `Aus dem Logbuch: ${s.times('uses', 'Mal', 'Mal')}, zusammen ${s.area('m2')}. Die Spanne ist die der Flächen.`,
  'care: days out of order': (s) =>
    `Der ${s.day('last')} liegt vor dem ${s.day('first')}. Bringen Sie die Tage in Ordnung.`,
  'care: first day missing': () => 'Der letzte Tag ist bekannt, der erste nicht. Geben Sie den ersten als Tag an.',
  'care: range upside down': (s) =>
    `${s.measure('from', 'temperature', 1)} liegt nicht unter ${s.measure('to', 'temperature', 1)}. Setzen Sie die niedrigere zuerst.`,
  'care: product without a name': () => 'Geben Sie den Namen an, wie auf dem Etikett.',
  'care: unit missing': () => 'Sagen Sie, was gezählt wird: Gramm, Liter, Dosen.',
  'care: counted after today': (s) =>
    `Der ${s.day('day')} liegt noch in der Zukunft. Geben Sie den Tag an, an dem gezählt wurde.`,
  'care: cost below nothing': () =>
    'Kosten unter null gibt es nicht. Lassen Sie das Feld leer, wenn nichts gezahlt wurde.',
  'care: somebody without a role': () =>
    'Jemand hat keine Funktion. Sagen Sie „Hilfskraft“, „Gießerei“; der Name darf fehlen.',
  'care: allowed and forbidden': (s) =>
    `„${methodOf(s.text('method'))?.name ?? s.text('method')}“ ist zugleich erlaubt und verboten. Wählen Sie eines.`,
};
