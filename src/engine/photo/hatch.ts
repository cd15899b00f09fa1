/** What a picture of pixels says of a place. */
export type Mark = 'green' | 'left out' | 'newly' | 'no longer' | 'still';

/**
 * How a place is hatched, the same over a photo and in the key beside it: pale ink with a dark line along it, so that it shows on dark
 * bronze, on pale green and in grey. Told apart by the pattern alone.
 */
export interface Hatch {
  /** Lines rising to the right, falling to the right, both, none but dots, or short level dashes. */
  readonly lines: 'rising' | 'falling' | 'crossed' | 'dots' | 'dashes';
  /** From one line or dot to the next, along the picture's edge, in pixels of the drawing. */
  readonly apart: number;
  /** Width of a line, or radius of a dot. */
  readonly ink: number;
  /** Whether its edge is drawn too. */
  readonly edged: boolean;
}

export const hatches: Readonly<Record<Mark, Hatch>> = {
  green: { lines: 'rising', apart: 22, ink: 2, edged: true },
  'left out': { lines: 'dashes', apart: 30, ink: 1, edged: false },
  newly: { lines: 'crossed', apart: 18, ink: 2, edged: true },
  'no longer': { lines: 'falling', apart: 26, ink: 3, edged: true },
  still: { lines: 'dots', apart: 20, ink: 2, edged: false },
};

export type Ink = 'pale' | 'dark' | 'none';

const inLine = (along: number, apart: number, ink: number): Ink => {
  const at = ((along % apart) + apart) % apart;
  if (at < ink) return 'pale';
  return at === ink || at === apart - 1 ? 'dark' : 'none';
};

const over = (one: Ink, other: Ink): Ink => {
  if (one === 'pale' || other === 'pale') return 'pale';
  return one === 'dark' ? one : other;
};

const inDot = (x: number, y: number, { apart, ink }: Hatch): Ink => {
  const row = Math.floor(y / apart);
  const across = ((x + (row % 2 === 0 ? 0 : apart / 2)) % apart) - apart / 2 + 0.5;
  const off = Math.hypot(across, (y % apart) - apart / 2 + 0.5);
  if (off <= ink + 0.5) return 'pale';
  return off <= ink + 1.5 ? 'dark' : 'none';
};

const inDash = (x: number, y: number, { apart, ink }: Hatch): Ink => {
  const row = Math.floor(y / apart);
  const across = (x + (row % 2 === 0 ? 0 : apart / 2)) % apart;
  return across < apart / 3 ? inLine(y, apart, ink) : 'none';
};

/** The ink at a pixel of the drawing; whole numbers from the left and the top. */
export const inkAt = (hatch: Hatch, x: number, y: number): Ink => {
  const { lines, apart, ink } = hatch;
  switch (lines) {
    case 'rising':
      return inLine(x + y, apart, ink);
    case 'falling':
      return inLine(x - y, apart, ink);
    case 'crossed':
      return over(inLine(x + y, apart, ink), inLine(x - y, apart, ink));
    case 'dots':
      return inDot(x, y, hatch);
    case 'dashes':
      return inDash(x, y, hatch);
  }
};
