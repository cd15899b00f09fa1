import { spoken } from '../tongue';
import type { Params } from './sentence';

const states: Readonly<Record<string, string>> = {
  found: 'something found',
  nothing: 'nothing found',
  carried: 'as last year',
  'not looked': 'not looked at',
};
const looks: Readonly<Record<string, string>> = { clear: 'clear', green: 'green is back', unsure: 'not sure' };

/** What the undo button names of a round. */
export const deedsOfRound = spoken('deedsOfRound', 'deedsOfRound', {
  'deed: round started': (s) => `started the round of ${s.day('date')}`,
  'deed: zone recorded': (s) => `recorded zone ${s.text('letter')}, ${states[s.text('state')] ?? s.text('state')}`,
  'deed: zone asked again': (s) => `rated zone ${s.text('letter')} again`,
  'deed: asking again skipped': () => 'left out asking again',
  'deed: round closed': (s) => `closed the round of ${s.day('date')}`,
  'deed: round opened again': (s) => `opened the round of ${s.day('date')} again`,
  'deed: looked, all clear': (s) => `saw ${s.times('count', 'zone', 'zones')} clear`,
  'deed: looked': (s) => `looked at zone ${s.text('letter')}, ${looks[s.text('result')] ?? s.text('result')}`,
  'deed: photo added to a look': (s) => `added a photo to the look at zone ${s.text('letter')}`,
} satisfies Readonly<Record<string, (s: Params) => string>>);
