import type { DemoEvent, PlantedGarden } from './plantedGarden';

/** Wash and wax days, what may be done, what is in store. */
export const careEvents = (_: PlantedGarden): DemoEvent[] => [];
