import { codesOfGroup, notSaid, wholeCollection } from '../../engine/hold';
import { exposures } from '../../engine/trade';
import { w } from '../../words';

const words = w.holds;
const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** An exposure group in plain words: "Faces up, open to rain". */
export const groupName = (group: string): string => {
  if (group === wholeCollection) return words.groupAll;
  const [facing, weather] = codesOfGroup(group);
  if (facing === undefined || weather === undefined) return words.groupNotSaid;
  const named = (code: string, none: string): string =>
    code === notSaid ? none : (exposures.find(({ id }) => id === code)?.name ?? code);
  return upper(`${named(facing, words.facingNotSaid)}, ${named(weather, words.weatherNotSaid)}`);
};
