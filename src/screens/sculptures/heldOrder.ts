import type { SculptureRow } from '../../actions';

/** The things of the rows as they stand, to be compared with how they stood. */
export const orderOf = (rows: readonly SculptureRow[]): string => rows.map(({ thing }) => thing).join(' ');

/** The rows in an order that is held. Works that came since follow at the end. */
export const inOrder = (rows: readonly SculptureRow[], order: string): readonly SculptureRow[] => {
  const places = new Map(order.split(' ').map((thing, place) => [thing, place]));
  const placeOf = ({ thing }: SculptureRow): number => places.get(thing) ?? places.size;
  return [...rows].sort((a, b) => placeOf(a) - placeOf(b));
};
