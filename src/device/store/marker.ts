import type { Box } from '../box';
import type { Self } from './self';

/** Kept outside the database: which store was here, and how much was in it. A cleared tablet is told from a new one by it. */
export interface Marker {
  readonly store: string;
  readonly entries: number;
}

const keyOf = (name: string): string => `${name}.marker`;

export const readMarker = (box: Box, name: string): Marker | undefined => {
  const kept = box.read(keyOf(name));
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { store, entries } = kept as Partial<Marker>;
  return typeof store === 'string' && typeof entries === 'number' ? { store, entries } : undefined;
};

export const writeMarker = (box: Box, name: string, self: Self): void =>
  box.write(keyOf(name), { store: self.store, entries: self.tally.entries } satisfies Marker);

export const forgetMarker = (box: Box, name: string): void => box.forget(keyOf(name));

/** What the marker says of the database found: that it is the one, that everything went, or that entries are missing. */
export const heldAgainst = (
  marker: Marker | undefined,
  found: Self | undefined,
): { readonly state: 'sound' } | { readonly state: 'removed' | 'missing'; readonly expected: number } => {
  if (!marker) return { state: 'sound' };
  const entries = found?.store === marker.store ? found.tally.entries : 0;
  if (found && found.store !== marker.store && found.tally.entries > 0) return { state: 'sound' };
  if (entries >= marker.entries && (found?.store === marker.store || marker.entries === 0)) return { state: 'sound' };
  return { state: entries === 0 ? 'removed' : 'missing', expected: marker.entries };
};
