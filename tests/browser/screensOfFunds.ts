import { type Entry, idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import type { Screen } from './screensOfGarden';

/** The budget of a year and the funds, with what opens over them. */
export const screensOfFunds = (entries: readonly Entry[]): readonly Screen[] => {
  const fund = idPart(entries.find(({ kind, gone }) => kind === 'fund' && !gone)!.thing);
  const { budget, funds } = w;
  return [
    { name: 'budget', hash: '#/budget' },
    { name: 'budget: works', hash: '#/budget', touch: [budget.works] },
    { name: 'sheet: prices', hash: '#/budget', touch: [budget.changePrices], sheet: true },
    { name: 'funds', hash: '#/funds' },
    { name: 'sheet: start a fund', hash: '#/funds', touch: [funds.add], sheet: true },
    { name: 'fund', hash: `#/fund/${fund}` },
    { name: 'sheet: fund', hash: `#/fund/${fund}`, touch: [funds.edit], sheet: true },
    { name: 'sheet: gift', hash: `#/fund/${fund}`, touch: [funds.addGift], sheet: true },
    { name: 'fund not here', hash: '#/fund/0192f000-0000-7000-8000-00000000ffff' },
  ];
};
