import type { CareReason } from '../../engine/care';
import { methodOf } from '../../engine/trade';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

/** What stands against an entry, a product or a method sheet, and where their figures come from. */
export const reasonsOfCare = spoken('reasonsOfCare', 'reasonsOfCare', {
  'care: area said': () => 'The area is as written down with the work.',
  'care: area of the zones': (s) =>
    `The whole area of ${s.times('zones', 'zone', 'zones')}; how much of it was taken off is not written down.`,
  'care: rate from the log': (s) =>
    `From the logbook: ${s.times('uses', 'time', 'times')}, ${s.area('m2')} in all. The range is that of the areas.`,
  'care: days out of order': (s) => `${s.day('last')} lies before ${s.day('first')}. Put the days in order.`,
  'care: first day missing': () => 'The last day is known, the first is not. Give the first as a day.',
  'care: range upside down': (s) =>
    `${s.measure('from', 'temperature', 1)} is not below ${s.measure('to', 'temperature', 1)}. Put the lower one first.`,
  'care: product without a name': () => 'Give its name, as on the label.',
  'care: unit missing': () => 'Say what is counted: grams, litres, tins.',
  'care: counted after today': (s) => `${s.day('day')} is still to come. Give the day it was counted.`,
  'care: cost below nothing': () => 'A cost below nothing is none. Leave it empty if nothing was paid.',
  'care: somebody without a role': () => 'Somebody has no role. Say “Helper”, “Foundry”; the name may stay out.',
  'care: allowed and forbidden': (s) =>
    `“${methodOf(s.text('method'))?.name ?? s.text('method')}” is both allowed and forbidden. Choose one.`,
} satisfies Sentences<CareReason>);
