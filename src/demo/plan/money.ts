import type { DemoEvent, PlantedGarden } from './plantedGarden';

/** What the ways to go on cost, and what was quoted. */
export const moneyEvents = (_: PlantedGarden): DemoEvent[] => [];
