import { type Entry, idPart } from '../../src/engine/record';
import { optionSorts } from '../../src/engine/trade';
import { w } from '../../src/words';
import type { Screen } from './screensOfGarden';

/** Ways to go on set side by side, what opens over them, and how money is reckoned. */
export function screensOfMoney(entries: readonly Entry[]): readonly Screen[] {
  const of = (number: string) =>
    idPart(entries.find(({ kind, body }) => kind === 'sculpture' && body.number === number)!.thing);
  const hash = `#/sculpture/${of('SW-02')}/options`;
  const { options } = w;
  const [waxing] = optionSorts;
  return [
    { name: 'options', hash },
    { name: 'options, none', hash: `#/sculpture/${of('SW-04')}/options` },
    { name: 'options: numbers', hash, touch: [options.showMore] },
    { name: 'sheet: way', hash, touch: [options.add, waxing!.name, options.sheet.addLine], sheet: true },
    { name: 'sheet: quote', hash, touch: [options.addQuote], sheet: true },
    { name: 'money', hash: '#/money' },
  ];
}
