/**
 * How many places the minor unit of a currency has. Source: ISO 4217, list one, from memory; what is not here has two.
 * "XXX" is the standard's code for no currency at all: the invented garden reckons in it.
 */
const places: Readonly<Record<string, number>> = {
  BIF: 0,
  CLP: 0,
  DJF: 0,
  GNF: 0,
  ISK: 0,
  JPY: 0,
  KMF: 0,
  KRW: 0,
  PYG: 0,
  RWF: 0,
  UGX: 0,
  UYI: 0,
  VND: 0,
  VUV: 0,
  XAF: 0,
  XOF: 0,
  XPF: 0,
  BHD: 3,
  IQD: 3,
  JOD: 3,
  KWD: 3,
  LYD: 3,
  OMR: 3,
  TND: 3,
  CLF: 4,
  UYW: 4,
};

const usualPlaces = 2;

export const placesOf = (currency: string): number => places[currency] ?? usualPlaces;

/** How many minor units one whole unit has: 100 cents. */
export const unitOf = (currency: string): number => 10 ** placesOf(currency);

/** Three capital letters, as every code of ISO 4217 is written; whether a state issues it is not asked. */
export const isCurrency = (text: string): boolean => /^[A-Z]{3}$/.test(text);

/** No currency: made-up amounts. */
export const noCurrency = 'XXX';
