import type { Thing } from '../../engine/record';

/** The area a zone has now: its last version's, m2. */
export const areaToday = (zone: Thing<'zone'>): number => zone.body.versions.at(-1)?.area.m2 ?? 0;
