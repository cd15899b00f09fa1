import { type Entry, idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import type { Screen } from './screensOfGarden';

/** Wash and wax days, what may be done, the season, the metal ledger, the store. */
export const screensOfCare = (entries: readonly Entry[]): readonly Screen[] => {
  const work = (number: string) =>
    idPart(entries.find(({ kind, body }) => kind === 'sculpture' && body.number === number)!.thing);
  const [waiting, supper, geese] = [work('SW-01'), work('SW-03'), work('SW-04')];
  const { careDay, logbook, products } = w;
  return [
    { name: 'care day', hash: `#/sculpture/${waiting}/care-day` },
    { name: 'care day: earlier', hash: `#/sculpture/${waiting}/care-day`, touch: [careDay.readingsEarlier] },
    { name: 'sheet: what was done', hash: `#/sculpture/${waiting}/care-day`, touch: [careDay.record], sheet: true },
    { name: 'method sheet', hash: `#/sculpture/${supper}/method-sheet` },
    {
      name: 'sheet: methods',
      hash: `#/sculpture/${supper}/method-sheet`,
      touch: [careDay.methods.change],
      sheet: true,
    },
    { name: 'season log', hash: `#/sculpture/${waiting}/season` },
    { name: 'metal ledger', hash: `#/sculpture/${supper}/metal` },
    { name: 'metal ledger, nothing', hash: `#/sculpture/${geese}/metal` },
    { name: 'products', hash: '#/products' },
    { name: 'sheet: product', hash: '#/products', touch: [products.add, products.more], sheet: true },
    {
      name: 'sheet: entry in full',
      hash: `#/sculpture/${supper}/logbook`,
      touch: [logbook.add, logbook.more],
      sheet: true,
    },
  ];
};
