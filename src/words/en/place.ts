import { measure, measureNumber, unitOf } from '../format';
import { spoken } from '../tongue';

/** Words of the screen Place: how corrosive the air is. */
export const place = spoken('place', 'place', {
  title: 'The air of the place',
  link: 'The air of the place',
  lead: 'Four yearly means tell how hard the air is on bare metal here, by two published standards. They are a label of the place, not of a work.',
  coupons:
    'This speaks of clean coupons of unalloyed metal hung in the open. It does not speak of a waxed work of art, and cast bronze is not copper: take it as a neighbour’s word.',
  back: 'Settings',

  entry: 'The four figures',
  entryWhat:
    'Yearly means, from the nearest weather and air quality stations. Your environment agency or weather service has them.',
  enter: 'Enter the four figures',
  change: 'Change',
  keep: 'Keep',
  stop: 'Leave as it was',
  kept: 'The air of the place is kept.',
  temperature: 'Air temperature',
  humidity: 'Relative humidity',
  so2: 'Deposition of sulfur dioxide',
  chloride: 'Deposition of chloride (salt)',
  units: { temperature: unitOf('temperature'), humidity: '%', so2: 'mg/(m²·day)', chloride: 'mg/(m²·day)' },
  hints: {
    temperature: `Yearly mean, ${measureNumber('temperature', -17.1)} to ${measure('temperature', 28.7)} where the function was derived.`,
    humidity: 'Yearly mean, 34 to 93 % where the function was derived.',
    so2: 'From the air in µg/m³: about 0.8 times that (from memory). Clean country air is under 4, towns 4 to 24. Derived for 0.7 to 150.4.',
    chloride: 'Inland under 3, near the sea 3 to 60, on the shore 60 to 300 and more. Derived for 0.4 to 760.5.',
  },
  from: 'Where the figures come from',
  fromHint: 'Station, years, who gave them.',
  notANumber: (what: string) => `${what} is no number. Write it in figures, for example 9.5.`,
  none: 'No figures yet. With four yearly means this page says how corrosive the air is.',

  classes: (so2: string, chloride: string) => `Deposition classes: sulfur dioxide ${so2}, chloride ${chloride}.`,
  beyondClasses: 'beyond the last class',
  result: 'First year on a clean coupon',
  metals: { copper: 'Copper', 'carbon steel': 'Carbon steel', zinc: 'Zinc' },
  metalFor: {
    copper: 'nearest to bronze',
    'carbon steel': 'armatures, bolts, plinth irons',
    zinc: 'galvanised fixings',
  },
  metal: 'Metal',
  rate: 'µm a year',
  mass: 'g/(m²·year)',
  category: 'Category',
  range: 'range',
  categoryWord: (id: string, word: string) => `${id}, ${word}`,
  noCategory: 'over the table',
  byMass: (id: string) => `by mass ${id}`,
  headline: (id: string, word: string) => `Copper: category ${id}, ${word}.`,
  headlineOver: 'Copper: over the last category of the table.',

  years: 'Over the years',
  yearsWhat:
    'Depth lost by a clean copper coupon, µm: the first year’s rate times a power of the years, past twenty a straight line.',
  yearsLabel: 'Depth lost by a clean copper coupon over fifty years',
  year: 'Years',
  depth: 'Depth, µm',
  yearsAxis: 'years',

  sources: 'Sources',
} as const);
