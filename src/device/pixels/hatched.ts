import { hatches, type Ink, inkAt, type Mark } from '../../engine/photo';
import { type Cells, clear } from './cells';

/** Opacity, blue, green, red, as pixels of a canvas lie in memory: near white and near black, the dark one half clear. */
const inks: Readonly<Record<Ink, number>> = { pale: 0xf5f8fdff, dark: 0x9c131a22, none: 0 };

/** The drawing as pixels of its box: the hatch of each cell's mark, and a line where a mark with an edge ends. */
export const hatched = (cells: Cells, markOf: (what: number) => Mark | undefined): Uint32Array<ArrayBuffer> => {
  const { box, of } = cells;
  const drawn = new Uint32Array(box.width * box.height);
  const known = Array.from({ length: 8 }, (_, what) => markOf(what)).map((mark) => mark && hatches[mark]);
  for (let at = 0; at < of.length; at++) {
    const hatch = known[of[at] as number];
    if (!hatch) continue;
    const [x, y] = [at % box.width, Math.floor(at / box.width)];
    const edge = hatch.edged ? edgeAt(cells, x, y) : 'none';
    drawn[at] = inks[edge === 'none' ? inkAt(hatch, x + box.left, y + box.top) : edge];
  }
  return drawn;
};

/** A pale line two pixels wide along the inner side of an edge, and a dark one along that. */
const edgeAt = (cells: Cells, x: number, y: number): Ink => {
  if (differsWithin(cells, x, y, 2)) return 'pale';
  return differsWithin(cells, x, y, 3) ? 'dark' : 'none';
};

const differsWithin = ({ box, of }: Cells, x: number, y: number, reach: number): boolean => {
  const own = of[y * box.width + x];
  const other = (column: number, row: number): boolean =>
    (column < 0 || row < 0 || column >= box.width || row >= box.height
      ? clear
      : (of[row * box.width + column] as number)) !== own;
  return other(x - reach, y) || other(x + reach, y) || other(x, y - reach) || other(x, y + reach);
};
