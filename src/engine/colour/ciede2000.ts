import type { Lab } from './lab';

const turn = 2 * Math.PI;
const degrees = Math.PI / 180;

/** How far a chroma stands out of grey, 0 to 1: the paper's square root over the seventh power of 25. */
const fullness = (chroma: number): number => Math.sqrt(chroma ** 7 / (chroma ** 7 + 25 ** 7));

/** Hue as an angle, 0 to a whole turn; greys have none and are given 0. */
const hueOf = (a: number, b: number): number => (a === 0 && b === 0 ? 0 : (Math.atan2(b, a) + turn) % turn);

/** From one hue to the other the shorter way round. */
const hueBetween = (from: number, to: number): number => {
  const around = to - from;
  if (around > Math.PI) return around - turn;
  return around < -Math.PI ? around + turn : around;
};

/** The hue in the middle of two, on the side where they are nearer. */
const hueAmid = (one: number, other: number): number => {
  const middle = (one + other) / 2;
  if (Math.abs(one - other) <= Math.PI) return middle;
  return middle < Math.PI ? middle + Math.PI : middle - Math.PI;
};

/**
 * Colour difference CIEDE2000 with all factors 1, 0 for equal colours. Both must be of the same illuminant and observer, whatever
 * these are: the figures are used as they stand. Source: ISO/CIE 11664-6; Sharma, Wu and Dalal 2005, Color Res. Appl. 30(1):21-30,
 * equations 2 to 22; held against their 34 pairs and against culori in the tests.
 */
export const ciede2000 = (one: Lab, other: Lab): number => {
  const stretch = 1.5 - 0.5 * fullness((Math.hypot(one.a, one.b) + Math.hypot(other.a, other.b)) / 2);
  const [a1, a2] = [one.a * stretch, other.a * stretch];
  const [c1, c2] = [Math.hypot(a1, one.b), Math.hypot(a2, other.b)];
  const [h1, h2] = [hueOf(a1, one.b), hueOf(a2, other.b)];
  const grey = c1 * c2 === 0;
  const dHue = grey ? 0 : 2 * Math.sqrt(c1 * c2) * Math.sin(hueBetween(h1, h2) / 2);
  const hue = grey ? h1 + h2 : hueAmid(h1, h2);
  const chroma = (c1 + c2) / 2;
  const light = ((one.L + other.L) / 2 - 50) ** 2;
  const waves =
    1 -
    0.17 * Math.cos(hue - 30 * degrees) +
    0.24 * Math.cos(2 * hue) +
    0.32 * Math.cos(3 * hue + 6 * degrees) -
    0.2 * Math.cos(4 * hue - 63 * degrees);
  // Blues, where hue and chroma are judged together.
  const bluish = 30 * degrees * Math.exp(-(((hue / degrees - 275) / 25) ** 2));
  const byLight = (other.L - one.L) / (1 + (0.015 * light) / Math.sqrt(20 + light));
  const byChroma = (c2 - c1) / (1 + 0.045 * chroma);
  const byHue = dHue / (1 + 0.015 * chroma * waves);
  const together = -Math.sin(2 * bluish) * 2 * fullness(chroma) * byChroma * byHue;
  return Math.sqrt(byLight ** 2 + byChroma ** 2 + byHue ** 2 + together);
};
