import { addPlanned, editPlanned } from '../../actions';
import type { Gift } from '../../engine/fund';
import { withReserve } from '../../engine/fund';
import { defaultMoneyRules, moneyOf, noCurrency } from '../../engine/money';
import { type BodyOf, nameOf } from '../../engine/record';
import { done } from '../walkRound';
import { type DemoEvent, madeBefore, type PlantedGarden } from './plantedGarden';

/** All amounts are made up, and so is their currency. */
const units = (amount: number) => moneyOf(amount, noCurrency);

const costs = [
  { id: 'strip', name: 'Strip, desalt, hot patina, wax', amount: units(46_000) },
  { id: 'scaffold', name: 'Scaffold and draining the basin', amount: units(7_500) },
  { id: 'oversight', name: 'Conservator oversight and documentation', amount: units(4_800) },
];
const lines = withReserve(costs, defaultMoneyRules.contingency, 'Reserve', noCurrency);
const quoted = '2024-10-07';
const quotedAnew = '2026-03-16';

type Given = Pick<Gift, 'who' | 'state'> & Partial<Gift> & { readonly units: number; readonly day: string };

const gifts: readonly Given[] = [
  { day: '2025-02-03', who: 'The garden’s own purse', units: 15_000, state: 'in hand', received: '2025-02-03' },
  { day: '2025-06-12', who: 'A family on the quay', units: 7_000, state: 'pledged', expected: '2027-03-01' },
  { day: '2025-09-08', who: 'A family from the hill', units: 5_000, state: 'pledged', expected: '2027-03-01' },
  {
    ...{ day: '2026-02-16', who: 'Harbour works yard', units: 4_000, state: 'pledged', chance: 0.5 },
    ...{ expected: '2027-09-01', only: ['scaffold'], inKind: true, note: 'Draining the basin with their own pumps.' },
  },
  { day: '2026-06-01', who: 'Arts grant', units: 20_000, state: 'hoped', chance: 0.4, expected: '2027-06-30' },
  { day: '2026-06-01', who: 'Spring appeal', units: 9_000, state: 'hoped', chance: 0.6, expected: '2027-05-31' },
];

/** Budget and prices of the year: what a day's work on the quay costs, made up. */
const prices: NonNullable<BodyOf<'yearPlan'>['prices']> = [
  { type: 'wash', each: units(12), per: 'm2' },
  { type: 'wax', each: units(30), per: 'm2' },
  { type: 'local treatment', each: units(480), per: 'm2' },
  { type: 'local treatment', each: units(350), per: 'work' },
  { type: 'repair', each: units(260), per: 'zone' },
];
const budget = units(5_000);

/** Money in hand, pledged and hoped; the budget of a year. */
export const fundsEvents = (garden: PlantedGarden): DemoEvent[] => {
  const { desk, works, things } = garden;
  const sculpture = works.get('SW-02')?.sculpture;
  if (!sculpture) return [];
  return [
    {
      day: '2024-11-11',
      run: async () => {
        const { thing } = await done(
          addPlanned(desk, 'fund', {
            ...{ title: 'A new skin for the stair', sculpture, lines, priced: quoted, wanted: '2028-05-02' },
            ...{ yearly: units(6_000), upkeep: units(3_100) },
            promise: 'Upkeep for twenty years, and each spring a page with the same view as on the leaflet.',
          }),
        );
        things.set('fund SW-02', thing);
      },
    },
    {
      day: quotedAnew,
      run: async () =>
        void (await done(editPlanned(desk, 'fund', madeBefore(garden, 'fund SW-02'), { priced: quotedAnew }))),
    },
    ...gifts.map(({ day, units: amount, ...gift }) => ({
      day,
      run: async () => {
        const fund = madeBefore(garden, 'fund SW-02');
        await done(addPlanned(desk, 'gift', { ...gift, sculpture, fund, amount: units(amount) }));
      },
    })),
    {
      day: '2026-01-26',
      run: async () =>
        void (await done(editPlanned(desk, 'yearPlan', nameOf.yearPlan(desk.collection, 2026), { budget, prices }))),
    },
  ];
};
