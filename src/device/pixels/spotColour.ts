import type { Point, Rgb, Size } from '../../engine/photo';
import type { Box } from './box';
import { pixelNumbers } from './pixelNumbers';

const radiusOn = ({ width }: Size): number => Math.max(pixelNumbers.leastSpot, Math.round(width * pixelNumbers.spot));

/** The square of pixels around a tap, as far as the picture goes. */
export const spotAt = ([x, y]: Point, size: Size): Box => {
  const radius = radiusOn(size);
  const span = (at: number, all: number): [number, number] => {
    const middle = Math.min(all - 1, Math.floor(at * all));
    const from = Math.max(0, middle - radius);
    return [from, Math.min(all, middle + radius + 1) - from];
  };
  const [left, width] = span(x, size.width);
  const [top, height] = span(y, size.height);
  return { left, top, width, height };
};

/** The middle value of red, of green and of blue: a scratch, a speck or a grain of noise does not move it. Four bytes a pixel. */
export const middleColour = (rgba: Uint8ClampedArray): Rgb => {
  const middle = (channel: number): number => {
    const values = rgba.filter((_, i) => i % 4 === channel).sort();
    return values[values.length >> 1] ?? 0;
  };
  return [middle(0), middle(1), middle(2)];
};
