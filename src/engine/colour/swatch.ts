import type { BodyOf } from '../record';
import type { Lab } from './lab';

type Three = readonly [number, number, number];

/** A white in CIE XYZ, and what turns XYZ into the light of red, green and blue on an sRGB screen. */
interface Seen {
  readonly white: Three;
  readonly rows: readonly [Three, Three, Three];
}

/** Source: the whites' chromaticities, x 0.3127 y 0.3290; the matrix of IEC 61966-2-1:1999 carried to more places, as CSS Color 4 prints it. */
const underD65: Seen = {
  white: [0.3127 / 0.329, 1, (1 - 0.3127 - 0.329) / 0.329],
  rows: [
    [3.2409699419045226, -1.5373831775700939, -0.4986107602930034],
    [-0.9692436362808796, 1.8759675015077204, 0.0415550574071756],
    [0.0556300796969936, -0.2039769588889765, 1.0569715142428784],
  ],
};

/** The same from D50, x 0.3457 y 0.3585, adapted to the screen's D65 after Bradford. */
const underD50: Seen = {
  white: [0.3457 / 0.3585, 1, (1 - 0.3457 - 0.3585) / 0.3585],
  rows: [
    [3.1341359569958707, -1.6173863321612538, -0.4906619460083532],
    [-0.978795502912089, 1.916254567259524, 0.03344273116131949],
    [0.07195537988411677, -0.2289768264158322, 1.405386058324125],
  ],
};

/** Back from the cube root and the straight line below (6/29)^3. Source: CIE 15:2004, 8.2.1; from memory. */
const cubed = (f: number): number => (f ** 3 > (6 / 29) ** 3 ? f ** 3 : (116 * f - 16) / (29 / 3) ** 3);

/** From light to what a pixel is given, 0 to 1 where a screen can show it. Source: IEC 61966-2-1:1999. */
const given = (light: number): number =>
  Math.abs(light) > 0.0031308 ? Math.sign(light) * (1.055 * Math.abs(light) ** (1 / 2.4) - 0.055) : 12.92 * light;

const asHex = (share: number): string =>
  Math.round(Math.max(0, Math.min(1, share)) * 255)
    .toString(16)
    .padStart(2, '0');

/**
 * How a reading looks on an sRGB screen: #rrggbb, and whether a screen can show it at all (`exact` false: the nearest it can). Only
 * D50 is adapted; under C and A white is taken for the screen's white. To be looked at, never measured or matched. Held against culori
 * in the tests.
 */
export const swatchOf = (
  { L, a, b }: Lab,
  illuminant: BodyOf<'reading'>['illuminant'],
): { readonly hex: string; readonly exact: boolean } => {
  const { white, rows } = illuminant === 'D50' ? underD50 : underD65;
  const y = (L + 16) / 116;
  const x = cubed(y + a / 500) * white[0];
  const z = cubed(y - b / 200) * white[2];
  const rgb = rows.map(([fromX, fromY, fromZ]) => given(fromX * x + fromY * cubed(y) * white[1] + fromZ * z));
  return { hex: `#${rgb.map(asHex).join('')}`, exact: rgb.every((share) => share >= 0 && share <= 1) };
};
