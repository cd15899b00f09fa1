import { kindOf } from '../../engine/trade';
import type { callAndTap as english } from '../en/callAndTap';
import { midSentence } from '../midSentence';
import type { Same } from '../tongue';

const kindName = (id: string): string => midSentence(kindOf(id)?.name ?? id);

/** Wie die Stufen der Bedeckungsleiter heruntergerufen werden, nach dem, was auf ihnen steht. */
const calledSteps: Readonly<Record<string, string>> = {
  '0': 'nichts da',
  '<1': 'unter eins',
  '3': 'drei',
  '5': 'fünf',
  '10': 'zehn',
  '15': 'fünfzehn',
  '20': 'zwanzig',
  '30': 'dreißig',
  '40': 'vierzig',
  '50': 'fünfzig',
  '70': 'siebzig',
  '90+': 'neunzig oder mehr',
};

const small = ['keine', 'ein', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun', 'zehn'];

/** Rufen und tippen: eine Person ruft von der Leiter, eine tippt am Boden, der Bildschirm liest zurück. */
export const callAndTap: Same<typeof english> = {
  tick: 'Rufen und tippen',
  tickWhat:
    'Zu zweit: Eine Person sieht hin und ruft, eine Hilfskraft am Boden tippt. Nach jeder Berührung steht in großer Schrift, was aufgenommen wurde; die Hilfskraft liest es vor.',
  whole: 'Alles zu dieser Zone',
  step: (label: string) => calledSteps[label] ?? label,
  between: (percent: string) => percent,
  photos: (n: number) => `${small[n] ?? n} ${n === 1 ? 'Foto' : 'Fotos'}`,
  from: (letter: string) => `aus ${letter}`,
  kind: kindName,
  gone: (kind: string) => `${kindName(kind)} weg`,
  count: { one: 'eins', 'two to five': 'zwei bis fünf', more: 'mehr als fünf' },
  there: 'noch da',
  notReached: (letter: string) => `${letter}, nicht erreicht: warum?`,
  each: (letter: string) => `${letter}, ohne Befund: Ist jeder frühere weg?`,
  sentence: (letter: string, parts: readonly string[]) => `${letter}, ${parts.join(', ')}.`,
  next: (kind: string) => `Jetzt: ${kindName(kind)}?`,
  now: (letter: string, name: string) => `Jetzt ${letter}, ${name}.`,
  kept: (letter: string, said: string) => `${letter}, ${said}.`,
};
