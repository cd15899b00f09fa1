import type { deedsOfRound as english } from '../en/deedsOfRound';
import type { Same } from '../tongue';

const states: Readonly<Record<string, string>> = {
  found: 'mit Befund',
  nothing: 'ohne Befund',
  carried: 'wie im Vorjahr',
  'not looked': 'nicht angesehen',
};
const looks: Readonly<Record<string, string>> = { clear: 'frei', green: 'Grün ist wieder da', unsure: 'unsicher' };

/** What the undo button names of a round. */
export const deedsOfRound: Same<typeof english> = {
  'deed: round started': (s) => `Rundgang vom ${s.day('date')} begonnen`,
  'deed: zone recorded': (s) => `Zone ${s.text('letter')} erfasst, ${states[s.text('state')] ?? s.text('state')}`,
  'deed: zone asked again': (s) => `Zone ${s.text('letter')} ein zweites Mal beurteilt`,
  'deed: asking again skipped': () => 'zweite Beurteilung ausgelassen',
  'deed: round closed': (s) => `Rundgang vom ${s.day('date')} abgeschlossen`,
  'deed: round opened again': (s) => `Rundgang vom ${s.day('date')} wieder geöffnet`,
  'deed: looked, all clear': (s) => `${s.times('count', 'Zone', 'Zonen')} frei gesehen`,
  'deed: looked': (s) => `Zone ${s.text('letter')} angesehen, ${looks[s.text('result')] ?? s.text('result')}`,
  'deed: photo added to a look': (s) => `Foto zum Kontrollblick auf Zone ${s.text('letter')} hinzugefügt`,
};
