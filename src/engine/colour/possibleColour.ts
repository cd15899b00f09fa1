import type { Lab } from './lab';

/** What figures of a lit surface can be at all, least and most. Our own choice for a* and b*: wider than any surface colour. */
export const colourLimits = { L: [0, 100], a: [-128, 128], b: [-128, 128] } as const;

/** The figure that no surface has, or undefined where all three can be. */
export const impossibleFigure = (value: Lab): keyof Lab | undefined =>
  (['L', 'a', 'b'] as const).find((what) => {
    const [low, high] = colourLimits[what];
    return !(value[what] >= low && value[what] <= high);
  });
