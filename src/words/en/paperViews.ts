import { list } from '../format';
import { spoken } from '../tongue';

/** Sides of a work as they are drawn on papers, and photos of one spot. */
export const paperViews = spoken('paperViews', 'paperViews', {
  told: (side: string, letters: readonly string[]) => `Side: ${side}. Zones drawn on it: ${list(letters)}.`,
  photo: (side: string) => `Photo of the side: ${side}`,
  photoOf: (side: string, day: string) => (day === '' ? `Photo, ${side}` : `Photo, ${side}, ${day}`),
  drawn: (side: string) => `Zones, ${side}. Letters as in the tables.`,
  sameSpot: (station: string, day: string, state: string) =>
    `${day}, from station ${station}${state === '' ? '' : ` (${state})`}`,
  wet: { dry: 'dry', damp: 'damp', wet: 'wet' },
  washed: { 'before wash': 'before washing', 'after wash': 'after washing' },
});
