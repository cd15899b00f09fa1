import { named } from './named';
import type { Source } from './source';

/** How a cast metal takes up and carries heat: kg/m3, J/(kg K), W/(m K) as a range. */
export interface HeatOfMetal {
  readonly id: string;
  readonly name: string;
  readonly density: number;
  readonly specificHeat: number;
  readonly conducts: { readonly low: number; readonly high: number };
  readonly source: Source;
}

const handbook: Source = { text: 'Handbook figures.', sure: 'from memory' };

export const heatOfMetals: readonly HeatOfMetal[] = named('heatOfMetals', [
  {
    id: 'tin bronze',
    name: 'Tin bronze',
    density: 8800,
    specificHeat: 380,
    conducts: { low: 45, high: 75 },
    source: handbook,
  },
  {
    id: 'silicon bronze',
    name: 'Silicon bronze',
    density: 8530,
    specificHeat: 380,
    conducts: { low: 33, high: 40 },
    source: handbook,
  },
  { id: 'brass', name: 'Brass', density: 8500, specificHeat: 380, conducts: { low: 105, high: 125 }, source: handbook },
]);

/** Share of a torch's heat that goes into the metal in the open air. */
export const torchShare = {
  low: 0.1,
  high: 0.4,
  source: { text: 'Our own assumption: most of an open flame warms the air.', sure: 'own choice' },
} as const satisfies { low: number; high: number; source: Source };

/** Power of a hand torch on propane, kW. */
export const torchPower = {
  low: 5,
  high: 60,
  source: { text: 'Sellers’ figures.', sure: 'from memory' },
} as const satisfies {
  low: number;
  high: number;
  source: Source;
};
