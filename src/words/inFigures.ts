import { tongueNow } from './tongue';

/** The few words in a figure. Here and not in a file of words, which would be read before the language is chosen. */
const inFigures = {
  en: { under: 'under', over: 'over', to: 'to', bytes: 'bytes', quotes: ['“', '”'] },
  de: { under: 'unter', over: 'über', to: 'bis', bytes: 'Bytes', quotes: ['„', '“'] },
} as const;
export const ours = () => inFigures[tongueNow().language];

/** Two ends of a range, already written: "64 to 79". */
export const fromTo = (low: string, high: string): string => `${low} ${ours().to} ${high}`;

/** What somebody else wrote, or a name, in the middle of a sentence. */
export const inQuotes = (text: string): string => ours().quotes.join(text);
