import type { BodyOf } from '../../engine/record';
import { refuse } from '../outcome';
import { refusal } from '../reasonCodes';

/** What figures of a surface can be at all; what the record takes is a little wider. */
const possible = { L: [0, 100], a: [-128, 128], b: [-128, 128] } as const;

/** Refuses figures no surface has. */
export const soundColour = (value: BodyOf<'agreedColour'>['value']): void => {
  for (const what of ['L', 'a', 'b'] as const) {
    const [low, high] = possible[what];
    if (!(value[what] >= low && value[what] <= high)) refuse(refusal('colour not possible', { what, low, high }));
  }
};

/** The opening of a hand-held instrument in mm, where it is said. */
export const soundAperture = (aperture: number | undefined): void => {
  if (aperture !== undefined && !(aperture >= 0.5 && aperture <= 100)) refuse(refusal('aperture not possible', {}));
};
