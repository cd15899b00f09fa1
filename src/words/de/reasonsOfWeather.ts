import type { reasonsOfWeather as english } from '../en/reasonsOfWeather';
import type { Same } from '../tongue';

/** As the surface stands over it: in the dative. */
const points: Readonly<Record<string, string>> = { dew: 'Taupunkt', frost: 'Reifpunkt' };
const byProduct = (product: string): string => (product ? ` „${product}“ verlangt` : ' Kaltwachsen verlangt');

/** What speaks for or against washing or waxing now. Temperatures in degrees Celsius. */
export const reasonsOfWeather: Same<typeof english> = {
  'weather: frost': (s) =>
    `Frost: Luft oder Oberfläche liegt bei ${s.measure('limit', 'temperature')} oder darunter. Kein Wasser und kein Wachs auf die Bronze.`,
  'weather: too near the dew point': (s) =>
    `Die Oberfläche liegt ${s.measure('margin', 'difference', 1)} über dem ${points[s.text('point')] ?? s.text('point')} von ${s.measure('celsius', 'temperature', 1)}; nötig sind ${s.measure('needs', 'difference')}, also ${s.measure('wanted', 'temperature', 1)}. Wachs würde Feuchte einschließen.`,
  'weather: too damp': (s) =>
    `Die Luftfeuchte beträgt ${s.number('humidity', 1)} %; nötig sind weniger als ${s.number('limit')} %.`,
  'weather: not dry long enough': (s) =>
    `Bisher ${s.number('hours')} Stunden trocken; nötig sind ${s.number('needs')}.`,
  'weather: dryness not known': (s) =>
    `Niemand weiß, seit wann es trocken ist; nötig sind ${s.number('needs')} Stunden. Sehen Sie in Fugen und Vertiefungen nach.`,
  'weather: surface too cold': (s) =>
    `Die Oberfläche hat ${s.measure('surface', 'temperature', 1)};${byProduct(s.text('product'))} mindestens ${s.measure('limit', 'temperature')}.`,
  'weather: surface too hot': (s) =>
    `Die Oberfläche hat ${s.measure('surface', 'temperature', 1)};${byProduct(s.text('product'))} höchstens ${s.measure('limit', 'temperature')}. Versuchen Sie es im Schatten oder am Abend.`,
  'weather: margin enough': (s) =>
    `Die Oberfläche liegt ${s.measure('margin', 'difference', 1)} über dem ${points[s.text('point')] ?? s.text('point')} von ${s.measure('celsius', 'temperature', 1)}; ${s.measure('needs', 'difference')} genügen.`,
  'weather: only just': (s) =>
    `Nur knapp: mit der Unsicherheit von Handgeräten können es ${s.measure('low', 'difference', 1)} sein. Messen Sie vor der nächsten Zone noch einmal.`,
  'weather: wash goes': () => 'Kein Frost, und das Metall ist nicht heiß: Wasser ist erlaubt.',
  'weather: humidity not possible': () =>
    'Die Luftfeuchte liegt über 0 und bei höchstens 100 %. Sehen Sie noch einmal auf das Messgerät.',
  'weather: after today': (s) => `Der ${s.day('day')} liegt noch in der Zukunft. Geben Sie den Tag der Messung an.`,
  'weather: gone on without a word': () => 'Sagen Sie, wer trotzdem weitermacht, und warum.',
};
