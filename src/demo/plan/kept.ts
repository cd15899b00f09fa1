import { addPlanned } from '../../actions';
import type { BodyOf } from '../../engine/record';
import { done } from '../walkRound';
import type { DemoEvent, PlantedGarden } from './plantedGarden';

/** Where things are kept, and papers that went out. Made up, as all of the garden is. */
export const keptEvents = ({ desk, works }: PlantedGarden): DemoEvent[] => {
  const of = (number: string): string => works.get(number)?.sculpture ?? '';
  const kept = (day: string, body: Omit<BodyOf<'keptWhere'>, 'found'>): DemoEvent => ({
    day,
    run: async () => void (await done(addPlanned(desk, 'keptWhere', { ...body, found: day } as BodyOf<'keptWhere'>))),
  });
  return [
    kept('2025-12-02', {
      sculpture: of('SW-02'),
      sort: 'keys',
      what: 'Pump house and isolator of the basin',
      where: 'Key board in the tool shed, hook 7',
      who: 'Head gardener',
    }),
    kept('2025-12-02', {
      sculpture: of('SW-03'),
      sort: 'spares',
      what: 'One lens cast with the five, chipped',
      where: 'Store, drawer 4, wrapped',
      who: 'Steward',
    }),
    kept('2025-12-02', {
      sculpture: of('SW-02'),
      sort: 'samples',
      what: 'Powder of zone I, three vials, November 2025',
      where: 'With the conservator',
      who: 'Conservator',
    }),
    kept('2025-12-02', {
      sort: 'archive copy',
      what: 'Bag of each December, on two disks',
      where: 'Office safe, and the town archive of Vesperhythe',
      who: 'Steward',
    }),
    {
      day: '2026-03-20',
      run: async () =>
        void (await done(
          addPlanned(desk, 'paperIssued', {
            ...{ sculpture: of('SW-02'), paper: 'condition-report', about: of('SW-02'), status: 'final' },
            ...{ title: 'Condition report: SW-02 Half-Tide Stair', date: '2026-03-20', by: 'Steward' },
            ...{ to: 'three bidders, with the request', state: 'before the round of May' },
          } as BodyOf<'paperIssued'>),
        )),
    },
  ];
};
