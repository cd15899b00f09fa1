import type { Source } from '../trade';

interface OptionNumber {
  readonly value: number;
  /** What it is, with its unit. */
  readonly what: string;
  readonly source: Source;
}

const own = (value: number, what: string): OptionNumber => ({
  value,
  what,
  source: { text: 'Chosen for this project', sure: 'own choice' },
});

/** Every number the options rest on, apart from the collection's own rules of money. */
export const optionNumbers = {
  rateStep: own(0.01, 'Each sum is shown at the rate set and this much under and over it, a year'),
  shortHold: own(6, 'A coating that lasts less does not reach from one care of the year to the next, months'),
  longHold: own(
    10,
    'A coating that lasts this long reaches from one year’s care to the next but for the winter, months',
  ),
  wideShare: own(0.3, 'Share of the surface that is green from which it is no matter of single places'),
  littleShare: own(0.02, 'Share of the surface that is green under which nothing presses'),
  fewPlacesGreen: own(0.7, 'Share of all the green that lies in few places'),
  fewPlacesArea: own(0.4, 'Most of the area those few places may take, share'),
  unknownShare: own(0.5, 'Share of the zones of which no hold is known, from which too little is known'),
  waitAfterCause: own(12, 'A cause removed shows what it does within a full year, months'),
  quoteSoon: own(30, 'A quote that ends within so many days is about to end'),
  interval: own(2, 'What if the interval of what comes every few years is this many times shorter or longer'),
  growth: own(0.02, 'What if prices and effort rise by so much less or more a year'),
  rate: own(0.01, 'What if the rate is so much lower or higher'),
} as const satisfies Record<string, OptionNumber>;

/** How far a price may be off, as a share up and down, by who says it. */
export const priceSpread: Readonly<Record<'quote' | 'estimate' | 'made up', OptionNumber>> = {
  quote: own(0.1, 'A quote is met within this, share'),
  estimate: own(0.25, 'An estimate is met within this, share'),
  'made up': own(0.5, 'A price nobody gave may be off by this, share'),
};

/** What if a colour holds so many years, and is then laid anew. */
export const colourHolds: { readonly years: readonly [number, number, number]; readonly source: Source } = {
  years: [6, 10, 15],
  source: { text: 'Chosen for this project', sure: 'own choice' },
};

/** Years for which the price of waiting is told. */
export const waitingYears: readonly number[] = [1, 3];
