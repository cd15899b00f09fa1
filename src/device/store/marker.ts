import type { Box } from '../box';
import { everIn, type Self } from './self';

/** Kept outside the database: which store was here, and how much was in it. A cleared tablet is told from a new one by it. */
export interface Marker {
  readonly store: string;
  readonly entries: number;
  /** Entries taken out again before. None where it is missing. */
  readonly out?: number;
}

const keyOf = (name: string): string => `${name}.marker`;

export const readMarker = (box: Box, name: string): Marker | undefined => {
  const kept = box.read(keyOf(name));
  if (typeof kept !== 'object' || kept === null) return undefined;
  const { store, entries, out = 0 } = kept as Partial<Marker>;
  const sound = typeof store === 'string' && typeof entries === 'number' && typeof out === 'number';
  return sound ? { store, entries, out } : undefined;
};

export const writeMarker = (box: Box, name: string, self: Self): void =>
  box.write(keyOf(name), { store: self.store, entries: self.tally.entries, out: self.out ?? 0 } satisfies Marker);

export const forgetMarker = (box: Box, name: string): void => box.forget(keyOf(name));

/**
 * What the marker says of the database found: that it is the one, that everything went, or that entries are missing. Held against all that
 * ever came in: the browser writes a marker to the disk later than the database, and a kill in between leaves one that still counts what
 * was taken out.
 */
export const heldAgainst = (
  marker: Marker | undefined,
  found: Self | undefined,
): { readonly state: 'sound' } | { readonly state: 'removed' | 'missing'; readonly expected: number } => {
  if (!marker) return { state: 'sound' };
  const { store, entries, out = 0 } = marker;
  const here = found?.tally.entries ?? 0;
  const sound = found?.store === store ? everIn(found) >= entries + out : here > 0 || entries === 0;
  return sound ? { state: 'sound' } : { state: here === 0 ? 'removed' : 'missing', expected: entries };
};
