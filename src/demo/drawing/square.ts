import { noiseAt } from '../../engine/chance';
import type { Picture } from './paint';

const BROWN = 5;
const GREEN = 7;
const PALE = 10;
const DARK = 11;

/** A sentinel square in its template: a pale rim with a dark tick at every centimetre, and inside it bronze with exactly the stated share of green. */
export const paintSquare = (green: number, seed: number, width = 200): Picture => {
  const pixels = new Uint8Array(width * width);
  const rim = Math.round(width / 12);
  const inside: number[] = [];
  for (let y = 0; y < width; y++) {
    for (let x = 0; x < width; x++) {
      const place = y * width + x;
      const edge = Math.min(x, y, width - 1 - x, width - 1 - y);
      if (edge >= rim) {
        inside.push(place);
        pixels[place] = BROWN + (noiseAt(x, y, width / 3, seed + 7) > 0.44 ? 1 : 0);
      } else {
        const along = x > y === width - 1 - x > y ? x : y;
        const tick = ((along - rim) * 10) / (width - 2 * rim);
        pixels[place] = edge > rim / 2 && Math.abs(tick - Math.round(tick)) < 0.12 ? DARK : PALE;
      }
    }
  }
  const ranked = inside
    .map((p) => ({ p, v: noiseAt(p % width, Math.floor(p / width), width / 6, seed) }))
    .sort((a, b) => b.v - a.v || a.p - b.p);
  for (const { p, v } of ranked.slice(0, Math.round(inside.length * green))) pixels[p] = GREEN + (v > 0.6 ? 1 : 0);
  return { width, height: width, pixels };
};
