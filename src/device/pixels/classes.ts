import { pixelClass, type Size } from '../../engine/photo';
import type { Box } from './box';

/** What is no part of the outline. */
export const outside = 3;

/** One class a pixel of a box of a picture, row by row: those of `pixelClass`, or `outside`. */
export interface Classes {
  /** Of the whole picture, in the same pixels as the box. */
  readonly size: Size;
  readonly box: Box;
  readonly of: Uint8Array;
}

export const noClasses = (size: Size, box: Box): Classes => ({
  size,
  box,
  of: new Uint8Array(box.width * box.height).fill(outside),
});

export interface Counted {
  readonly sound: number;
  readonly green: number;
  readonly leftOut: number;
}

export const countedIn = ({ of }: Pick<Classes, 'of'>): Counted => {
  const many = new Uint32Array(4);
  for (let at = 0; at < of.length; at++) (many[of[at] as number] as number)++;
  return {
    sound: many[pixelClass.sound] as number,
    green: many[pixelClass.green] as number,
    leftOut: many[pixelClass.leftOut] as number,
  };
};
