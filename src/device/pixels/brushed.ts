import { type Point, pixelClass } from '../../engine/photo';
import type { BodyOf } from '../../engine/record';
import { type Classes, outside } from './classes';

export type Brush = NonNullable<BodyOf<'measure'>['working']['brush']>;

/** Puts right what the strokes say, the later ones over the earlier, within the outline only: also where a pixel was left out. */
export const brushed = (classes: Classes, brush: Brush): void => {
  const { width, height } = classes.size;
  for (const { as, radius, path } of brush) {
    const to = pixelClass[as];
    const at = path.map(([x, y]): Point => [x * width, y * height]);
    at.forEach((point, i) => {
      capsule(classes, at[Math.max(0, i - 1)] as Point, point, Math.max(0.5, radius * width), to);
    });
  }
};

/** Everything nearer to the line from a to b than the radius. */
const capsule = ({ box, of }: Classes, [ax, ay]: Point, [bx, by]: Point, radius: number, to: number): void => {
  const [dx, dy] = [bx - ax, by - ay];
  const length = dx * dx + dy * dy;
  const left = Math.max(box.left, Math.floor(Math.min(ax, bx) - radius));
  const right = Math.min(box.left + box.width, Math.ceil(Math.max(ax, bx) + radius));
  const top = Math.max(box.top, Math.floor(Math.min(ay, by) - radius));
  const bottom = Math.min(box.top + box.height, Math.ceil(Math.max(ay, by) + radius));
  for (let row = top; row < bottom; row++) {
    const y = row + 0.5 - ay;
    for (let column = left; column < right; column++) {
      const x = column + 0.5 - ax;
      const along = length === 0 ? 0 : Math.min(1, Math.max(0, (x * dx + y * dy) / length));
      if ((x - along * dx) ** 2 + (y - along * dy) ** 2 > radius * radius) continue;
      const at = (row - box.top) * box.width + column - box.left;
      if (of[at] !== outside) of[at] = to;
    }
  }
};
