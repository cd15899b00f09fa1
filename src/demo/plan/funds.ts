import type { DemoEvent, PlantedGarden } from './plantedGarden';

/** Money in hand, pledged and hoped. */
export const fundsEvents = (_: PlantedGarden): DemoEvent[] => [];
