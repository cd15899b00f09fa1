import type { PixelsAsked, ToldOf } from './asked';
import type { AtHand } from './atHand';
import { changeBetween } from './change';
import type { Breath } from './classified';
import { maskIn } from './mask';
import { middleColour, spotAt } from './spotColour';

/** The answer to one question, wherever it is worked out. Rejects with a StoreProblem where the photo gives none. */
export const answerTo = async (ask: PixelsAsked, hand: AtHand, breath: Breath): Promise<ToldOf[keyof ToldOf]> => {
  switch (ask.do) {
    case 'colour': {
      const { size, read } = await hand.picture(ask.photo);
      return { colour: middleColour(read(spotAt(ask.at, size), size)) };
    }
    case 'mask':
      return maskIn(hand, ask, breath);
    case 'change':
      return changeBetween(hand, ask, breath);
  }
};
