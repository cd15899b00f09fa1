import { differenceCiede2000, modeLab65, modeRgb, useMode } from 'culori/fn';
import type { Lab } from './lab';

const difference = (): ((one: Lab, other: Lab) => number) => {
  useMode(modeRgb);
  useMode(modeLab65);
  const between = differenceCiede2000();
  // The library takes a colour for one under D65 but works with the three figures as they are: nothing is adapted from light to light.
  const asTaken = ({ L, a, b }: Lab) => ({ mode: 'lab65', l: L, a, b }) as const;
  return (one, other) => between(asTaken(one), asTaken(other));
};

let made: ReturnType<typeof difference> | undefined;

/**
 * Colour difference CIEDE2000 with all factors 1, 0 for equal colours. Both must be of the same illuminant and observer, whatever
 * these are: the figures are used as they stand. Source: ISO/CIE 11664-6; Sharma, Wu and Dalal 2005, Color Res. Appl. 30(1):21-30.
 */
export const ciede2000 = (one: Lab, other: Lab): number => {
  made ??= difference();
  return made(one, other);
};
