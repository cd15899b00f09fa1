import { named } from './named';
import type { Source } from './source';

/** Sorts of what stands in the store. */
export interface SortOfProduct {
  readonly id: string;
  readonly name: string;
  /** Stays on the work as a coating. */
  readonly coats: boolean;
  /** Putting it on or taking it off is planned with a conservator. */
  readonly askConservator: boolean;
  readonly source: Source;
}

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };
const procedure: Source = {
  text: 'Waxes and lacquer: US General Services Administration procedures for bronze, read on its pages.',
  sure: 'seen',
};
const own = { coats: false, askConservator: false } as const;

export const sortsOfProduct: readonly SortOfProduct[] = named('sortsOfProduct', [
  { ...own, id: 'microcrystalline', name: 'Microcrystalline wax', coats: true, source: procedure },
  { ...own, id: 'natural wax', name: 'Natural wax or blend', coats: true, source: procedure },
  { ...own, id: 'pigmented wax', name: 'Pigmented wax', coats: true, askConservator: true, source: practice },
  { ...own, id: 'lacquer', name: 'Lacquer', coats: true, askConservator: true, source: procedure },
  { ...own, id: 'inhibitor', name: 'Corrosion inhibitor', askConservator: true, source: practice },
  { ...own, id: 'detergent', name: 'Detergent', source: practice },
  { ...own, id: 'solvent', name: 'Solvent', askConservator: true, source: practice },
  { ...own, id: 'other', name: 'Other', source: practice },
]);

const byId = new Map(sortsOfProduct.map((sort) => [sort.id, sort]));

export const sortOfProduct = (id: string): SortOfProduct | undefined => byId.get(id);

/** Grams in one unit of what is weighed; millilitres in one of what is poured. */
export const unitSizes: Readonly<Record<string, { readonly in: 'g' | 'ml'; readonly size: number }>> = {
  g: { in: 'g', size: 1 },
  kg: { in: 'g', size: 1000 },
  ml: { in: 'ml', size: 1 },
  l: { in: 'ml', size: 1000 },
};

/** Days before its day that a product is said to run out of date. Our own choice. */
export const expiresSoonDays = 60;
