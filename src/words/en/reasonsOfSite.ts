import type { SiteReason } from '../../engine/site';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

const inputs: Readonly<Record<string, string>> = {
  temperature: 'The temperature',
  humidity: 'The relative humidity',
  so2: 'The deposition of sulfur dioxide',
  chloride: 'The deposition of chloride',
};

/** What has to be said beside a figure of how corrosive the air is. */
export const reasonsOfSite = spoken('reasonsOfSite', 'reasonsOfSite', {
  'site: outside the range': (s) =>
    `${inputs[s.text('what')] ?? s.text('what')}, ${s.number('value', 1)}, lies outside the range the function was derived from (${s.number('low', 1)} to ${s.number('high', 1)}). The rate is carried on past it and is less sure than the range says.`,
  'site: two columns, two categories': (s) =>
    `By thickness ${s.text('metal')} is in ${s.text('byThickness') || 'no category'}, by mass in ${s.text('byMass') || 'no category'}: the two columns of the standard’s table are rounded apart. This app goes by thickness.`,
  'site: beyond the table': (s) =>
    `The rate of ${s.text('metal')}, ${s.number('rate', 1)} µm a year, is over the last limit of the table (${s.number('most', 0)}): it has no category.`,
  'site: straight line beyond': (s) =>
    `Past ${s.number('years', 0)} years it is carried on as a straight line at the slope it has there.`,
  'site: clean coupons': () => 'This speaks of clean metal coupons in the open, not of a waxed work of art.',
} satisfies Sentences<SiteReason>);
