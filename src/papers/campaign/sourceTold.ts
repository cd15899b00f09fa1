import type { Source } from '../../engine/trade';
import { w } from '../../words';

/** Where a fact is from, with how far it was checked where the text does not say so itself. */
export const sourceTold = ({ text, sure }: Source): string =>
  sure === 'from memory' && !text.includes(w.paperSite.memory) ? w.paperSite.fromMemory(text.replace(/\.$/, '')) : text;
