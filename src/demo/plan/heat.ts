import type { DemoEvent, PlantedGarden } from './plantedGarden';

/** Layers, days of hot work, inserts near heat, access. */
export const heatEvents = (_: PlantedGarden): DemoEvent[] => [];
