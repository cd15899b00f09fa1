import { boundsOf, type Outline, type Size } from '../../engine/photo';

/** Pixels of a picture from the left and the top. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The pixels an outline can reach, none outside the picture; at least one pixel. */
export const boxOf = (outline: Outline, { width, height }: Size): Box => {
  const { x, y } = boundsOf(outline);
  const span = ([low, high]: readonly [number, number], all: number): [number, number] => {
    const from = Math.min(all - 1, Math.max(0, Math.floor(low * all)));
    return [from, Math.max(1, Math.min(all, Math.ceil(high * all)) - from)];
  };
  const [left, wide] = span(x, width);
  const [top, high] = span(y, height);
  return { left, top, width: wide, height: high };
};

/** The same picture with at most so many pixels. */
export const sizeWithin = (size: Size, most: number): Size =>
  scaled(size, Math.sqrt(most / (size.width * size.height)));

/** The picture made smaller, never larger. */
export const scaled = ({ width, height }: Size, by: number): Size => {
  const least = Math.min(1, by);
  return { width: Math.max(1, Math.floor(width * least)), height: Math.max(1, Math.floor(height * least)) };
};
