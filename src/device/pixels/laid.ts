import { boundsOf, mapped, type Outline, type PlaneMap } from '../../engine/photo';
import { type Classes, outside } from './classes';
import { eachSpan } from './spans';

/** The upright rectangle around a part and so far beyond it, share of the width: an edge of green may have moved over the part's own. */
export const surroundings = (part: Outline, beyond: number): Outline => {
  const { x, y } = boundsOf(part);
  const [left, right, top, foot] = [x[0] - beyond, x[1] + beyond, y[0] - beyond, y[1] + beyond];
  return [
    [
      [left, top],
      [right, top],
      [right, foot],
      [left, foot],
    ],
  ];
};

/** 1 for the pixels of the box that lie in the part. */
export const inPartOf = (part: Outline, { size, box, of }: Classes): Uint8Array => {
  const inPart = new Uint8Array(of.length);
  for (let row = 0; row < box.height; row++) {
    const line = row * box.width - box.left;
    eachSpan(part, size, row + box.top, (from, to) => inPart.fill(1, line + from, line + to));
  }
  return inPart;
};

/** What the earlier photo tells of each pixel of the later one's box. */
export const laid = (earlier: Classes, { size, box, of }: Classes, back: PlaneMap): Uint8Array => {
  const out = new Uint8Array(of.length).fill(outside);
  for (let at = 0; at < of.length; at++) {
    const x = (box.left + (at % box.width) + 0.5) / size.width;
    const y = (box.top + Math.floor(at / box.width) + 0.5) / size.height;
    const [fromX, fromY] = mapped(back, [x, y]);
    const column = Math.floor(fromX * earlier.size.width) - earlier.box.left;
    const row = Math.floor(fromY * earlier.size.height) - earlier.box.top;
    if (column < 0 || row < 0 || column >= earlier.box.width || row >= earlier.box.height) continue;
    out[at] = earlier.of[row * earlier.box.width + column] as number;
  }
  return out;
};
