import { spoken } from '../tongue';

/** English stands in the rows themselves: where a fact comes from, what a number is. Other languages have theirs here, by the English. */
export const facts: Readonly<Record<string, string>> = spoken('facts', 'facts', {});

/** As it is said in the language spoken. */
export const factSaid = (text: string): string => facts[text] ?? text;
