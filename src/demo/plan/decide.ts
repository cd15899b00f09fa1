import type { DemoEvent, PlantedGarden } from './plantedGarden';

/** Decisions with their tripwires, and what was answered. */
export const decideEvents = (_: PlantedGarden): DemoEvent[] => [];
