import { exposures } from '../trade';

/** Where a zone of no said exposure belongs. */
export const notSaid = 'not said';
/** Every zone of the collection together. */
export const wholeCollection = 'all';

/**
 * One facing and one weather stand for a zone; where several are said, the first of these that is. What wears a coating more
 * comes first, and what is particular before what is general. Codes of trade/exposures.
 */
export const facings: readonly string[] = ['up', 'recess', 'joint', 'vertical', 'down'];
export const weathers: readonly string[] = [
  'waterline',
  'spray',
  'splash',
  'sprinkler',
  'ponding',
  'drip',
  'handled',
  'open',
  'part sheltered',
  'sheltered',
];

const known = new Set(exposures.map(({ id }) => id));

/** The two codes of a zone's group, each 'not said' where nothing of its sort is. */
export const exposureOf = (codes: readonly string[]): { readonly facing: string; readonly weather: string } => {
  const first = (order: readonly string[]): string =>
    order.find((code) => known.has(code) && codes.includes(code)) ?? notSaid;
  return { facing: first(facings), weather: first(weathers) };
};

const between = ' / ';

/** The exposure group of a zone, told by codes: 'up / open', 'vertical / not said', 'not said'. Holds are compared inside one. */
export const groupOf = (codes: readonly string[]): string => {
  const { facing, weather } = exposureOf(codes);
  return facing === notSaid && weather === notSaid ? notSaid : `${facing}${between}${weather}`;
};

/** The codes a group's name is made of: none for the whole collection or where nothing is said. */
export const codesOfGroup = (group: string): readonly string[] => {
  const codes = group.split(between);
  return codes.length === 2 ? codes : [];
};
