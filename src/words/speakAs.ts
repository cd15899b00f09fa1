import { speakTrade } from '../engine/trade/named';
import { speak, type Tongue, type WordsOfLanguage } from './tongue';

export { tongueOf } from './tongue';

/** Brings the words of a language, where it is not English, and has all that is read from now on speak it. */
export const speakAs = async (tongue: Tongue): Promise<void> => {
  if (tongue.language === 'en') return speak(tongue);
  const [words, { namesOfTrade }] = await Promise.all([import('./de'), import('./de/trade')]);
  speak(tongue, words as WordsOfLanguage);
  speakTrade(namesOfTrade);
};
