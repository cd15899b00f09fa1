import { speakTrade } from '../engine/trade/named';
import { speak, type Tongue, type WordsOfLanguage } from './tongue';

export { tongueOf } from './tongue';

/** Brings the words of a language, where it is not English, and has all that is read from now on speak it. */
export const speakAs = async (tongue: Tongue): Promise<void> => {
  speak(tongue);
  if (tongue.language === 'en') return;
  const trade = import('./de/trade');
  const words = trade.then(async ({ namesOfTrade }) => {
    // The sentences reach for tables of the trade, so the names are there before them.
    speakTrade(namesOfTrade);
    return import('./de');
  });
  speak(tongue, (await words) as WordsOfLanguage);
};
