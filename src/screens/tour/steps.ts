import type { w } from '../../words';
import { pathTo } from '../shell';

/** What the tour needs to know of the garden: its works by number, and the campaigns of works. */
export interface Garden {
  readonly work: (number: string) => string | undefined;
  readonly campaignOf: (work: string) => string | undefined;
  readonly collection: string;
}

export interface Step {
  readonly key: keyof typeof w.tour.steps;
  /** Where it is to be seen; undefined where a visitor took that work away. */
  readonly to: (garden: Garden) => string | undefined;
}

const ofWork =
  (number: string, to: (work: string) => string) =>
  ({ work }: Garden): string | undefined => {
    const thing = work(number);
    return thing && to(thing);
  };

const ofCampaign =
  (number: string, to: (campaign: string) => string) =>
  ({ work, campaignOf }: Garden): string | undefined => {
    const thing = work(number);
    const campaign = thing && campaignOf(thing);
    return campaign && to(campaign);
  };

/** In the order of the tour: the list, change, wax, water, colour and heat, what is due, leaving alone, eyes, causes, papers. */
export const steps: readonly Step[] = [
  { key: 'works', to: () => pathTo.sculptures() },
  { key: 'blink', to: ofWork('SW-02', (work) => pathTo.compare(work)) },
  { key: 'sure', to: ofWork('SW-02', (work) => pathTo.thenAndNow(work)) },
  { key: 'holds', to: () => pathTo.holds() },
  { key: 'water', to: ofWork('SW-01', (work) => pathTo.map(work)) },
  { key: 'broken', to: ofWork('SW-03', (work) => pathTo.overTime(work)) },
  { key: 'heat', to: ofWork('SW-03', (work) => pathTo.inserts(work)) },
  { key: 'colour', to: ofWork('SW-03', (work) => pathTo.colour(work)) },
  { key: 'due', to: () => pathTo.due() },
  { key: 'geese', to: ofWork('SW-04', (work) => pathTo.overTime(work)) },
  { key: 'eyes', to: ofWork('SW-05', (work) => pathTo.overTime(work)) },
  { key: 'cause', to: ofWork('SW-06', (work) => pathTo.overTime(work)) },
  { key: 'board', to: ofCampaign('SW-02', (campaign) => pathTo.paper('board-case', campaign)) },
  { key: 'bidders', to: ofCampaign('SW-02', pathTo.quantities) },
  { key: 'successor', to: ({ collection }) => pathTo.paper('letter-to-successor', collection) },
  { key: 'bag', to: () => pathTo.carry() },
];
