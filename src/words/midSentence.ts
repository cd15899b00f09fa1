import { tongueNow } from './tongue';

/** Words a German name may begin with that are no nouns, and so begin small inside a sentence. */
const small = new Set([
  ...['aktiv', 'unklar', 'ruhend', 'leicht', 'mäßig', 'schwer', 'frei', 'unsicher', 'nass', 'trocken', 'feucht'],
  ...['eines', 'zwei', 'mehr', 'im', 'in', 'nicht', 'anderes', 'etwas', 'weiter', 'zuerst', 'neu', 'verschwunden'],
  ...['gleichmäßiger', 'blaugrüne', 'grüne', 'blasse', 'schwarze', 'dünne', 'rußige', 'blankes', 'wachsende', 'weißer'],
  ...[
    'offene',
    'offener',
    'loses',
    'lose',
    'korrodierte',
    'anderes',
    'örtliche',
    'beibehalten',
    'beobachten',
    'örtlich',
  ],
  ...['stehendes', 'heißes', 'allein', 'empfindliche', 'bedeckt', 'bestes', 'schlechtestes', 'jährlich'],
]);

/** A name as it stands inside a sentence: small in English; in German only where it does not begin with a noun. */
export const midSentence = (name: string): string => {
  if (tongueNow().language === 'en') return name.toLowerCase();
  const first = name.split(/[\s,.]/, 1)[0]?.toLowerCase() ?? '';
  return small.has(first) ? name.charAt(0).toLowerCase() + name.slice(1) : name;
};
