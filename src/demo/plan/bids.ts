import type { DemoEvent, PlantedGarden } from './plantedGarden';

/** Campaigns: causes, quantities, bids, papers, approvals, the agreed colour. */
export const bidsEvents = (_: PlantedGarden): DemoEvent[] => [];
