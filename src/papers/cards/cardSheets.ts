import { h, type PaperNode } from '../layout';
import { headOfCards, type OnCard, rowsOfCard, zoneCard } from './zoneCard';

/**
 * Millimetres that Letter, the lower of the two sheets, has for cards under their head; of a card the lines around its rows; of a row.
 * As printed, held by the browser test of papers: each sheet of cards is one page.
 */
const sheet = { cards: 222, around: 22, row: 6 } as const;

const heightOf = (card: OnCard): number => sheet.around + rowsOfCard(card) * sheet.row;

/** Cards shared out to sheets in their order. The head stands on each sheet by itself: not every browser repeats it on a new page. */
export const cardSheets = (cards: readonly OnCard[]): readonly PaperNode[] => {
  const sheets: OnCard[][] = [];
  let left = 0;
  for (const card of cards) {
    const height = heightOf(card);
    if (height > left) {
      sheets.push([]);
      left = sheet.cards;
    }
    sheets.at(-1)?.push(card);
    left -= height;
  }
  return sheets.map((on) => h('table', { class: 'card-sheet', tabindex: 0 }, headOfCards(), ...on.map(zoneCard)));
};
