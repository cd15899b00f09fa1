import type { DemoEvent, PlantedGarden } from './plantedGarden';

/** Plan of the year and of the site, incidents, moves, agreements, verdicts. */
export const yearEvents = (_: PlantedGarden): DemoEvent[] => [];
