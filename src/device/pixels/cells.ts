import type { Size } from '../../engine/photo';
import type { Box } from './box';
import type { Classes } from './classes';
import { pixelNumbers } from './pixelNumbers';

/** Size of a drawing over a picture: its longest side is always the same, so that the hatch is. */
export const drawingSize = ({ width, height }: Size): Size => {
  const by = pixelNumbers.overlay / Math.max(width, height);
  return { width: Math.max(1, Math.round(width * by)), height: Math.max(1, Math.round(height * by)) };
};

/** What the cells of a drawing hold: one number a pixel of its box. */
export interface Cells {
  /** Of the whole drawing. */
  readonly size: Size;
  readonly box: Box;
  readonly of: Uint8Array;
}

/** More than there are classes, or kinds of change. */
const kinds = 8;

/** A cell that says nothing. */
export const clear = 255;

/** Pixels of the picture under each cell along one side: from, up to and not including to; at least one. */
const under = (cell: number, cells: number, pixels: number, first: number, many: number): readonly [number, number] => {
  const from = Math.max(0, Math.floor((cell / cells) * pixels) - first);
  const to = Math.ceil(((cell + 1) / cells) * pixels) - first;
  return [from, Math.min(many, Math.max(from + 1, to))];
};

/** Each cell gets the class most of the pixels under it have; `clear` where most lie outside. */
export const cellsOf = ({ size, box, of }: Classes, outside: number): Cells => {
  const drawing = drawingSize(size);
  const left = Math.floor((box.left / size.width) * drawing.width);
  const top = Math.floor((box.top / size.height) * drawing.height);
  const right = Math.min(drawing.width, Math.ceil(((box.left + box.width) / size.width) * drawing.width));
  const bottom = Math.min(drawing.height, Math.ceil(((box.top + box.height) / size.height) * drawing.height));
  const into: Box = { left, top, width: Math.max(1, right - left), height: Math.max(1, bottom - top) };
  const cells = new Uint8Array(into.width * into.height).fill(clear);
  const columns = Array.from({ length: into.width }, (_, i) =>
    under(left + i, drawing.width, size.width, box.left, box.width),
  );
  const many = new Uint32Array(kinds);
  for (let row = 0; row < into.height; row++) {
    const [y0, y1] = under(top + row, drawing.height, size.height, box.top, box.height);
    for (let column = 0; column < into.width; column++) {
      const [x0, x1] = columns[column] as readonly [number, number];
      for (let one = 0; one < kinds; one++) many[one] = 0;
      for (let y = y0; y < y1; y++)
        for (let at = y * box.width + x0; at < y * box.width + x1; at++) {
          const one = of[at] as number;
          many[one] = (many[one] as number) + 1;
        }
      let most = 0;
      for (let one = 1; one < kinds; one++) if ((many[one] as number) > (many[most] as number)) most = one;
      if (most !== outside) cells[row * into.width + column] = most;
    }
  }
  return { size: drawing, box: into, of: cells };
};
