import { colourLimits, impossibleFigure, type Lab } from '../../engine/colour';
import { refuse } from '../outcome';
import { refusal } from '../reasonCodes';

/** Refuses figures no surface has. */
export const soundColour = (value: Lab): void => {
  const what = impossibleFigure(value);
  if (!what) return;
  const [low, high] = colourLimits[what];
  refuse(refusal('colour not possible', { what, low, high }));
};

/** What a hand-held instrument looks through, mm across. */
const openings = { least: 0.5, most: 100 };

/** Refuses an opening no hand-held instrument has; it may be left unsaid. */
export const soundAperture = (aperture: number | undefined): void => {
  if (aperture !== undefined && !(aperture >= openings.least && aperture <= openings.most))
    refuse(refusal('aperture not possible', {}));
};
