import { addPlanned, editPlanned, setPlanned } from '../../actions';
import { defaultMoneyRules, moneyOf, noCurrency } from '../../engine/money';
import { lastDayOfQuote, type OptionCost } from '../../engine/options';
import { type BodyOf, nameOf } from '../../engine/record';
import { done } from '../walkRound';
import { type DemoEvent, madeBefore, type PlantedGarden } from './plantedGarden';

/** All amounts are made up, and so is their currency. */
const units = (amount: number) => moneyOf(amount, noCurrency);
const cost = (name: string, amount: number, more: Partial<OptionCost>): OptionCost => ({
  ...{ name, amount: units(amount), first: 1, price: 'estimate' },
  ...more,
});
const said = (value: number, low: number, high: number) => ({ value, low, high, from: 'said' as const });

type Way = Pick<
  BodyOf<'option'>,
  'sort' | 'title' | 'zones' | 'costs' | 'goodMonths' | 'irreversible' | 'irreversibleSize'
>;

const waxOnly: Way = {
  sort: 'keep waxing',
  title: 'Yearly wax only',
  costs: [cost('Wash and wax, longer each year', 3100, { every: 1, growth: 0.04 })],
  goodMonths: said(3, 2, 4),
  irreversible: 0,
};

const waxAndLocal = (zones: string[]): Way => ({
  sort: 'wax and local treatment',
  title: 'Wax, and local treatment every second year',
  zones,
  costs: [
    cost('Wash and wax', 3100, { every: 1, growth: 0.02 }),
    cost('Green off and colour anew in the worst zones', 6500, { every: 2, growth: 0.02 }),
  ],
  goodMonths: said(7, 6, 8),
  irreversible: 10,
  irreversibleSize: 'small',
});

const stripAll: Way = {
  sort: 'strip and repatinate',
  title: 'Strip, hot patina, then yearly wax',
  costs: [
    cost('Strip, desalt, hot patina, wax', 46_000, { contingency: true, price: 'quote' }),
    cost('Scaffold and draining the basin', 7500, { contingency: true }),
    cost('Conservator oversight and documentation', 4800, { contingency: true }),
    cost('Wash and wax', 3100, { every: 1, growth: 0 }),
  ],
  goodMonths: said(10, 8, 11),
  irreversible: 1,
  irreversibleSize: 'large',
};

const quoteDay = '2024-10-07';
const renewalDay = '2026-03-16';

/** What the ways to go on cost, and what was quoted. */
export const moneyEvents = (garden: PlantedGarden): DemoEvent[] => {
  const { desk, works, things } = garden;
  const work = works.get('SW-02');
  if (!work) return [];
  const { sculpture, zones } = work;
  const worst = ['A', 'C', 'E', 'H', 'I'].flatMap((letter) => zones.get(letter) ?? []);
  const quote = (date: string, days: number): BodyOf<'quote'> => ({
    ...{ sculpture, option: madeBefore(garden, 'option SW-02 C'), who: 'Foundry of the quay (invented)' },
    ...{ what: 'Strip, desalt, hot patina, wax', amount: units(46_000), state: 'quote', date },
    validUntil: lastDayOfQuote(date, days),
  });
  return [
    {
      day: '2024-11-04',
      run: async () => {
        const rules = { version: 1, currency: noCurrency, ...defaultMoneyRules };
        await done(setPlanned(desk, 'moneyRules', nameOf.moneyRules(desk.collection), rules));
        for (const [letter, way] of [
          ['A', waxOnly],
          ['B', waxAndLocal(worst)],
          ['C', stripAll],
        ] as const) {
          const { thing } = await done(addPlanned(desk, 'option', { sculpture, ...way }));
          things.set(`option SW-02 ${letter}`, thing);
        }
        const { thing } = await done(addPlanned(desk, 'quote', quote(quoteDay, 180)));
        things.set('quote SW-02', thing);
      },
    },
    {
      day: renewalDay,
      run: async () => {
        const { thing } = await done(addPlanned(desk, 'quote', quote(renewalDay, 240)));
        await done(editPlanned(desk, 'quote', madeBefore(garden, 'quote SW-02'), { renewedBy: thing }));
      },
    },
  ];
};
