/** A place on the drawing. */
type Place = readonly [x: number, y: number];

/** Thousandths of a pixel, as much as shows. */
const written = (places: readonly Place[]): string =>
  places.map((place) => place.map((at) => Math.round(at * 1000) / 1000).join()).join('L');

/** Straight from place to place; '' where there is none. One place alone is closed, so that a round end shows it. */
export const linePath = (places: readonly Place[]): string =>
  places.length === 0 ? '' : `M${written(places)}${places.length === 1 ? 'Z' : ''}`;

/** What lies between the upper and the lower line, both from left to right; '' where there is nothing. */
export const bandPath = (upper: readonly Place[], lower: readonly Place[]): string =>
  upper.length === 0 ? '' : `M${written([...upper, ...lower.toReversed()])}Z`;
