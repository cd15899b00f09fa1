import type { reasonsOfLife as english } from '../en/reasonsOfLife';
import type { Same } from '../tongue';

const limits: Readonly<Record<string, string>> = { shape: 'die Form', scale: 'den Maßstab', median: 'den Median' };

/** Why a curve of lives is what it is, or is none. */
export const reasonsOfLife: Same<typeof english> = {
  'life: no interval': () => 'Es gibt kein Intervall, mit dem sich rechnen ließe.',
  'life: no end seen': (s) =>
    `Bei keiner der ${s.times('n', 'Lebensdauer', 'Lebensdauern')} wurde das Ende gesehen; nichts sagt, wie lang sie sind: Nur, dass sie länger sind.`,
  'life: never seen lasting': (s) =>
    `Jede der ${s.times('n', 'Lebensdauer', 'Lebensdauern')} war beim ersten Blick vorbei; nichts sagt, wie kurz sie sind. Ein früherer Blick würde es sagen.`,
  'life: one interval only': () => 'Ein Intervall allein ergibt keine Kurve.',
  'life: all share a stretch': (s) =>
    `Ein Zeitpunkt zwischen ${s.number('from', 1)} und ${s.number('to', 1)} passte zu allen ${s.times('n', 'Intervall', 'Intervallen')}; nichts sagt, wie verschieden die Lebensdauern sind: Die Likelihood hat kein Maximum.`,
  'life: no maximum': (s) =>
    `Die Likelihood aus ${s.times('n', 'Intervall', 'Intervallen')} hat kein Maximum: Sie wächst mit immer flacherer oder steilerer Kurve weiter.`,
  'life: shape borrowed': (s) =>
    `Die Form der Kurve (${s.number('shape', 2)}) ist entliehen; nur ihr Maßstab kommt von hier.`,
  'life: no lower limit': (s) =>
    `Für ${limits[s.text('what')] ?? s.text('what')} gibt es keine untere Grenze: Die Intervalle setzen keine.`,
  'life: no upper limit': (s) =>
    `Für ${limits[s.text('what')] ?? s.text('what')} gibt es keine obere Grenze: Die Intervalle setzen keine.`,
};
