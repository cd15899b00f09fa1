import { pathTo } from './paths';

let last: string = pathTo.sculptures();

/** The screen that was open before the help was: where help leads back to. */
export const cameFrom = (): string => last;

export const rememberPlace = (place: string): void => {
  if (!place.startsWith(pathTo.help())) last = place;
};
