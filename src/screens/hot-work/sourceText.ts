import type { Source } from '../../engine/trade';

/** Where a fact is from, with how far it was checked where the text does not say so itself. */
export const sourceText = ({ text, sure }: Source): string =>
  sure === 'from memory' && !text.includes('memory') ? `${text.replace(/\.$/, '')}, ${sure}.` : text;
