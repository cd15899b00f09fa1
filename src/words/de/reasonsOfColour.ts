import type { reasonsOfColour as english } from '../en/reasonsOfColour';
import type { Same } from '../tongue';
import { wordOf } from './codes';

/** Why a figure of a colour is as it is, or why there is none. */
export const reasonsOfColour: Same<typeof english> = {
  'colour: other illuminant': (s) =>
    `Eine Messung gilt für die Lichtart ${s.text('one')}, die andere für ${s.text('other')}: Ihre Zahlen bedeuten nicht dasselbe, also wird kein Unterschied genannt. Bitten Sie die Person, die gemessen hat, auch um die Zahlen unter der anderen Lichtart; die meisten Geräte können beides.`,
  'colour: other observer': (s) =>
    `Eine Messung gilt für den ${s.text('one')}°-Normalbeobachter, die andere für den ${s.text('other')}°: Es wird kein Unterschied genannt. Die meisten Geräte geben dieselbe Messung für beide an; bitten Sie darum.`,
  'colour: other geometry': (s) =>
    `Eine Messung hat die Geometrie ${s.text('one')}, die andere ${s.text('other')}. Sie sehen den Glanz der Oberfläche verschieden; es wird kein Unterschied genannt, und nachträglich lässt sich keiner berechnen.`,
  'colour: other aperture': (s) =>
    `Eine Messung ging durch eine Öffnung von ${s.number('one', 1)} mm, die andere von ${s.number('other', 1)} mm: Sie erfassten andere Teile einer ungleichmäßigen Oberfläche, also wird kein Unterschied genannt.`,
  'colour: other wetness': (s) =>
    `Bei der einen Messung war die Oberfläche ${wordOf(s.text('one'))}, bei der anderen ${wordOf(s.text('other'))}: Der Unterschied wäre der des Wassers, also wird keiner genannt.`,
  'colour: another surface since': (s) =>
    `Dazwischen: ${s.treatment('treatment')}, ${s.day('date')}. Die Oberfläche ist seither eine andere, also wird keine Veränderung genannt.`,
  'colour: aperture not known': () =>
    'Die Messöffnung ist nicht für beide aufgeschrieben. War sie nicht dieselbe, sagt die Zahl weniger.',
  'colour: wetness not known': () =>
    'Ob die Oberfläche trocken war, ist nicht für beide aufgeschrieben. Eine nasse Oberfläche ist dunkler, welche Farbe sie auch hat.',
  'colour: other instrument': () =>
    'Die beiden wurden mit verschiedenen Geräten gemessen. Selbst zwei eines Herstellers können um einige Zehntel einer Einheit abweichen.',
  'colour: done in between': (s) =>
    `Dazwischen: ${s.treatment('treatment')}, ${s.day('date')}. Das kann die Farbe verändert haben.`,
  'colour: passed over': (s) =>
    `Die Messung vom ${s.day('date')} liegt dazwischen und wurde auf andere Weise gemacht; sie wird übergangen.`,
  'colour: few placings': (s) =>
    `${s.times('n', 'Aufsetzung', 'Aufsetzungen')} des Geräts; ${s.number('fewest')} oder mehr würden mehr sagen.`,
  'colour: spread of placings': (s) =>
    `Die Spanne ergibt sich daraus, wie weit die einzelnen Messungen von ihrem Mittel liegen: ${s.number('spread', 1)} Einheiten.`,
  'colour: spread assumed': (s) =>
    `Es sind zu wenige Aufsetzungen, um zu sagen, wie weit eine von der nächsten liegt; ${s.number('spread', 1)} Einheiten sind angenommen.`,
  'colour: too far apart for the formula': (s) =>
    `Über ${s.number('limit')} Einheiten sagt die Zahl „weit auseinander“, und nicht mehr, wie weit.`,
};
