import type { FirmnessReason } from '../../engine/firmness';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const inWords = (count: string): string => small[Number(count)] ?? count;

/** How firm a place in the order of need is. */
export const reasonsOfFirmness: Sentences<FirmnessReason> = spoken('reasonsOfFirmness', 'reasonsOfFirmness', {
  'firmness: stays among the first': (s) =>
    s.text('places') === '1'
      ? `Stays the first in ${s.number('ofHundred')} of 100 redraws.`
      : `Stays among the first ${inWords(s.text('places'))} in ${s.number('ofHundred')} of 100 redraws.`,
  'firmness: near the end of the list': (s) =>
    `Stands near the end of a list of ${s.number('zones')} zones: whether it stays there says little.`,
  'firmness: places it may have': (s) =>
    s.text('low') === s.text('high')
      ? `Nine redraws in ten leave it at place ${s.number('low')}.`
      : `Nine redraws in ten put it between places ${s.number('low')} and ${s.number('high')}.`,
  'firmness: what was redrawn': (s) =>
    `The order was drawn ${s.number('draws')} times anew: each hazard up to ${s.number('percent')} % lighter or heavier, each coverage within its error; the light of a day and the eye of a person move all that they touched together. Areas, and what a person set, stay as they are.`,
  'firmness: urgency set by a person': () => 'Its urgency class was set by a person and is not redrawn.',
});
