/** A6 lying, and the bar on it; millimetres. One unit of a card's drawing is a millimetre of paper. */
export const cardSize = { width: 148, height: 105 } as const;
export const barLength = 100;

/** Two cards fit a sheet of A4 and of Letter, one above the other, with room for a line of text. */
export const cardsOnSheet = 2;

/**
 * Steps of grey as L*, with the sRGB value that has it (IEC 61966-2-1, CIE 1976 L*), from white to black. The middle one
 * reflects about 18 %.
 */
export const greySteps: readonly { readonly lightness: number; readonly fill: string }[] = [
  { lightness: 100, fill: '#ffffff' },
  { lightness: 80, fill: '#c6c6c6' },
  { lightness: 65, fill: '#9e9e9e' },
  { lightness: 50, fill: '#777777' },
  { lightness: 35, fill: '#525252' },
  { lightness: 20, fill: '#303030' },
  { lightness: 0, fill: '#000000' },
];
