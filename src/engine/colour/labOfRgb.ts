import type { Lab } from './lab';

/**
 * sRGB primaries in CIE XYZ, each row over the D65 white (x 0.3127, y 0.3290), so that white is 1, 1, 1.
 * Source: IEC 61966-2-1:1999 primaries and white, carried to more places; matrix as CSS Color 4 prints it (from memory), held to a colour library by test.
 */
const whiteX = 0.3127 / 0.329;
const whiteZ = (1 - 0.3127 - 0.329) / 0.329;
const xr = 0.4123907992659593 / whiteX;
const xg = 0.357584339383878 / whiteX;
const xb = 0.1804807884018343 / whiteX;
const yr = 0.2126390058715102;
const yg = 0.715168678767756;
const yb = 0.0721923153607337;
const zr = 0.0193308187155918 / whiteZ;
const zg = 0.119194779794626 / whiteZ;
const zb = 0.9505321522496607 / whiteZ;

const light = (value: number): number => {
  const share = value / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
};
const lightOf = Float64Array.from({ length: 256 }, (_, value) => light(value));

/** Where the cube root gives way to a straight line, and that line. Source: CIE 15:2004, 8.2.1, (6/29)^3 and (29/3)^3; from memory. */
const bend = (6 / 29) ** 3;
const root = (t: number): number => (t > bend ? Math.cbrt(t) : ((29 / 3) ** 3 * t + 16) / 116);

/**
 * CIE 1976 L*a*b* under D65 of an sRGB pixel, red, green and blue 0 to 255 (a mean may lie between whole numbers).
 * Written out, without arrays, since a picture asks it many million times. It tells pixels of one picture apart; it is never a
 * colour reading of a surface: a tablet's picture is not measured light.
 */
export const labOfRgb = (r: number, g: number, b: number): Lab => {
  const red = lightOf[r] ?? light(r);
  const green = lightOf[g] ?? light(g);
  const blue = lightOf[b] ?? light(b);
  const y = root(yr * red + yg * green + yb * blue);
  if (r === g && g === b) return { L: 116 * y - 16, a: 0, b: 0 };
  const x = root(xr * red + xg * green + xb * blue);
  const z = root(zr * red + zg * green + zb * blue);
  return { L: 116 * y - 16, a: 500 * (x - y), b: 200 * (y - z) };
};
