import type { Source } from '../../engine/trade';
import { spoken } from '../tongue';

/** English stands in the rows themselves: where a fact comes from, what a number is. Other languages have theirs here, by the English. */
export const facts: Readonly<Record<string, string>> = spoken('facts', 'facts', {});

export const fromMemory = spoken('facts', 'fromMemory', {
  word: 'memory',
  said: (text: string) => `${text}, from memory.`,
});

/** As it is said in the language spoken. */
export const factSaid = (text: string): string => facts[text] ?? text;

/** Where a fact is from, with how far it was checked where the text does not say so itself. */
export const sourceSaid = ({ text, sure }: Source): string => {
  const said = factSaid(text);
  return sure === 'from memory' && !said.includes(fromMemory.word) ? fromMemory.said(said.replace(/\.$/, '')) : said;
};
