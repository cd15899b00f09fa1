import { bidsEvents } from './bids';
import { careEvents } from './care';
import { decideEvents } from './decide';
import { fundsEvents } from './funds';
import { heatEvents } from './heat';
import { keptEvents } from './kept';
import { moneyEvents } from './money';
import type { DemoEvent, PlantedGarden } from './plantedGarden';
import { yearEvents } from './year';

export type { DemoEvent, PlantedGarden, PlantedWork } from './plantedGarden';

/** What is planned, paid, prepared and watched in the invented garden. On one day money comes before decisions, decisions before campaigns. */
export const planEvents = (garden: PlantedGarden): DemoEvent[] =>
  [moneyEvents, fundsEvents, decideEvents, bidsEvents, heatEvents, careEvents, yearEvents, keptEvents].flatMap(
    (events) => events(garden),
  );
