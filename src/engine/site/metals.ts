import { named, type Source } from '../trade';

export type Metal = 'copper' | 'carbon steel' | 'zinc';

/** One sum of the dose-response function: a pollutant's deposition to a power, times e to the climate. */
interface Term {
  readonly factor: number;
  readonly power: number;
  readonly humidity: number;
}

/** First-year corrosion of one metal: r = sulfur term (with f(T)) + chloride term (with a slope along T), um a year. */
export interface MetalRow {
  readonly id: Metal;
  readonly so2: Term & { readonly cold: number; readonly warm: number };
  readonly chloride: Term & { readonly temperature: number };
  /** g/cm3: from um to g/m2. */
  readonly density: number;
  /** Upper limits of the categories C1 to CX, each inclusive. */
  readonly limitsUm: readonly number[];
  readonly limitsMass: readonly number[];
  /** Exponents of attack over years: mean, and with two standard deviations added. */
  readonly b1: number;
  readonly b2: number;
  readonly source: Source;
}

const categories: Source = {
  text: 'ISO 9223:2012 Table 2, read in a public copy of DIN EN ISO 9223:2012-05',
  sure: 'seen',
};

export const categoryRows = named('categoriesOfAir', [
  { id: 'C1', word: 'very low' },
  { id: 'C2', word: 'low' },
  { id: 'C3', word: 'medium' },
  { id: 'C4', word: 'high' },
  { id: 'C5', word: 'very high' },
  { id: 'CX', word: 'extreme' },
] as const);
export type Category = (typeof categoryRows)[number]['id'];
export const categorySource = categories;

const fromMemory = (metal: string): Source => ({
  text: `ISO 9223:2012, dose-response function of ${metal}; coefficients from memory. ISO 9224:2012 Table 3: exponents, seen`,
  sure: 'from memory',
});

export const metals: readonly MetalRow[] = [
  {
    id: 'copper',
    so2: { factor: 0.0053, power: 0.26, humidity: 0.059, cold: 0.126, warm: -0.08 },
    chloride: { factor: 0.01025, power: 0.27, humidity: 0.036, temperature: 0.049 },
    density: 8.96,
    limitsUm: [0.1, 0.6, 1.3, 2.8, 5.6, 10],
    limitsMass: [0.9, 5, 12, 25, 50, 90],
    b1: 0.667,
    b2: 0.726,
    source: fromMemory('copper'),
  },
  {
    id: 'carbon steel',
    so2: { factor: 1.77, power: 0.52, humidity: 0.02, cold: 0.15, warm: -0.054 },
    chloride: { factor: 0.102, power: 0.62, humidity: 0.033, temperature: 0.04 },
    density: 7.86,
    limitsUm: [1.3, 25, 50, 80, 200, 700],
    limitsMass: [10, 200, 400, 650, 1500, 5500],
    b1: 0.523,
    b2: 0.575,
    source: {
      text: 'ISO 9223:2012, dose-response function of carbon steel, coefficients seen in a public implementation; ISO 9224:2012 Table 3, seen',
      sure: 'seen',
    },
  },
  {
    id: 'zinc',
    so2: { factor: 0.0129, power: 0.44, humidity: 0.046, cold: 0.038, warm: -0.071 },
    chloride: { factor: 0.0175, power: 0.57, humidity: 0.008, temperature: 0.085 },
    density: 7.14,
    limitsUm: [0.1, 0.7, 2.1, 4.2, 8.4, 25],
    limitsMass: [0.7, 5, 15, 30, 60, 180],
    b1: 0.813,
    b2: 0.873,
    source: fromMemory('zinc'),
  },
];

export const metalRow = (id: Metal): MetalRow => {
  const row = metals.find((metal) => metal.id === id);
  if (!row) throw new RangeError(`There is no row for ${id}.`);
  return row;
};

/** What the functions were derived from: outside these ranges they are flagged, never clamped. */
export const inputRanges = {
  temperature: { low: -17.1, high: 28.7, unit: '°C' },
  humidity: { low: 34, high: 93, unit: '%' },
  so2: { low: 0.7, high: 150.4, unit: 'mg/(m²·day)' },
  chloride: { low: 0.4, high: 760.5, unit: 'mg/(m²·day)' },
} as const;
export const inputRangesSource: Source = {
  text: 'ISO 9223:2012 Table 3, seen in a public implementation',
  sure: 'seen',
};

/** A rate told by the functions: from a third less to a half more, log-normal and so uneven. */
export const uncertainty = { down: 0.33, up: 0.5 } as const;
export const uncertaintySource: Source = {
  text: 'ISO 9223:2012 Annex A: that the uncertainty is log-normal, seen in an excerpt; the level for copper, steel and zinc from memory',
  sure: 'from memory',
};

/** Years to which a power of time is followed; beyond, a straight line at its slope there. */
export const powerUntil = 20;
export const powerUntilSource: Source = {
  text: 'ISO 9224:2012: attack up to 20 years as a power of time, seen in the abstract; the straight line beyond from memory',
  sure: 'from memory',
};

/** Upper limits, inclusive, of the deposition classes. */
export const depositionClasses = {
  so2: [
    { id: 'P0', to: 4 },
    { id: 'P1', to: 24 },
    { id: 'P2', to: 80 },
    { id: 'P3', to: 200 },
  ],
  chloride: [
    { id: 'S0', to: 3 },
    { id: 'S1', to: 60 },
    { id: 'S2', to: 300 },
    { id: 'S3', to: 1500 },
  ],
} as const;
export const depositionSource: Source = {
  text: 'ISO 9223:2012 Tables B.3 and B.4, seen in a public implementation; the limits of 1992, still in handbooks, differ',
  sure: 'seen',
};
