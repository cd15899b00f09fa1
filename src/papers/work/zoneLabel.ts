import type { Thing } from '../../engine/record';

/** "A, Top arc". */
export const zoneLabel = (zone: Thing<'zone'> | undefined): string =>
  zone ? [zone.body.letter, zone.body.name].filter(Boolean).join(', ') : '?';

/** "A, B and F" is for sentences; in a row of a table "A B F" is enough. */
export const letters = (zones: readonly Thing<'zone'>[]): string => zones.map(({ body }) => body.letter).join(', ');
