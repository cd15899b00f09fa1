import { heightRules, weatherFloat, workingReachStanding } from '../trade';

const footShare = heightRules.find(({ id }) => id === 'ladder foot')?.value ?? Number.NaN;

/** Angle of a ladder to the ground when its foot is out a quarter of the working length: arccos 1/4, about 75.52 degrees. */
export const ladderAngle = (Math.acos(footShare) * 180) / Math.PI;

/** Metres from the wall to the foot, for a ladder used over so many metres of its own length. 29 CFR 1926.1053(b)(5)(i). */
export const ladderFoot = (workingLength: number): number => workingLength * footShare;

/** The ladder that leans at so many metres above the ground: its working length and how far out its foot stands, metres. */
export const ladderTo = (height: number) => {
  const length = height / Math.sqrt(1 - footShare ** 2);
  return { length, foot: ladderFoot(length) };
};

/** Metres a person has to be lifted to work at the top: plinth and work less what is reached standing; never below the ground. */
export const workingReach = (plinth: number, height: number): number =>
  Math.max(0, plinth + height - workingReachStanding.value);

/** Whole days on site with the days lost to weather, from whole days of work. */
export const daysWithWeather = (days: number): number => Math.ceil(days * (1 + weatherFloat.value) - 1e-9);
