import type { reasonsOfEye as english, eyeRests as englishRests } from '../en/reasonsOfEye';
import type { Same } from '../tongue';

/** "9 doppelt beurteilte Bedeckungen und 12 Felder einer Augenprobe", or the one of the two there is. */
export const eyeRests: typeof englishRests = (s) => {
  const pairs = s.times('pairs', 'doppelt beurteilte Bedeckung', 'doppelt beurteilte Bedeckungen');
  const patches = s.times('patches', 'Feld einer Augenprobe', 'Felder einer Augenprobe');
  if (s.text('patches') === '0') return pairs;
  return s.text('pairs') === '0' ? patches : `${pairs} und ${patches}`;
};

/** Why the error of one eye, or a figure corrected for it, is what it is. */
export const reasonsOfEye: Same<typeof english> = {
  'eye: assumed, not known yet': () =>
    'Wie beständig dieses Auge urteilt, ist noch nicht bekannt; die übliche Unsicherheit ist angenommen.',
  'eye: known from': (s) =>
    `Bekannt aus: ${eyeRests(s)}; so viel wert wie ${s.number('worth', 1)} neben den 10 angenommenen.`,
  'eye: not held steadier than': (s) =>
    `Es ergab sich noch beständiger, doch kein Auge gilt als beständiger als ${s.number('sd', 2)}.`,
  'eye: widened for few pairs': (s) => `${s.number('times', 2)}-mal so weit genommen, weil es auf so wenigem beruht.`,
  'eye: corrected by the curve': (s) =>
    `Berichtigt nach dem, was dieses Auge zu ${s.times('patches', 'Feld', 'Feldern')} bekannter Bedeckung sagte. Das Eingetragene bleibt, wie es ist.`,
  'eye: bias not shown': () =>
    'Dieses Auge zeigt keine Neigung zu einer Seite, die nicht auch der Zufall ergäbe; es wird nichts berichtigt.',
  'eye: no curve yet': () => 'Dieses Auge hat noch keine Augenprobe gemacht; es wird nichts berichtigt.',
  'eye: curve too flat': () =>
    'Dieses Auge sagte bei wenig und bei viel fast dasselbe; aus seinem Urteil lässt sich der wahre Wert nicht ableiten.',
};
