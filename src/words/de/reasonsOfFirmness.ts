import type { reasonsOfFirmness as english } from '../en/reasonsOfFirmness';
import type { Same } from '../tongue';

const small = ['null', 'einem', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun', 'zehn'];
const inWords = (count: string): string => small[Number(count)] ?? count;

/** How firm a place in the order of need is. */
export const reasonsOfFirmness: Same<typeof english> = {
  'firmness: stays among the first': (s) =>
    s.text('places') === '1'
      ? `Bleibt in ${s.number('ofHundred')} von 100 Neuziehungen an erster Stelle.`
      : `Bleibt in ${s.number('ofHundred')} von 100 Neuziehungen unter den ersten ${inWords(s.text('places'))}.`,
  'firmness: near the end of the list': (s) =>
    `Steht nahe am Ende einer Liste von ${s.number('zones')} Zonen: Ob sie dort bleibt, sagt wenig.`,
  'firmness: places it may have': (s) =>
    s.text('low') === s.text('high')
      ? `Neun von zehn Neuziehungen lassen sie auf Platz ${s.number('low')}.`
      : `Neun von zehn Neuziehungen setzen sie zwischen die Plätze ${s.number('low')} und ${s.number('high')}.`,
  'firmness: what was redrawn': (s) =>
    `Die Reihenfolge wurde ${s.number('draws')}-mal neu gezogen: jede Gefährdung um bis zu ${s.number('percent')} % leichter oder schwerer, jede Bedeckung innerhalb ihrer Unsicherheit; das Licht eines Tages und das Auge einer Person verschieben gemeinsam alles, was sie berührten. Flächen, und was eine Person festgelegt hat, bleiben, wie sie sind.`,
  'firmness: urgency set by a person': () =>
    'Die Dringlichkeitsklasse wurde von einer Person festgelegt und wird nicht neu gezogen.',
};
