import type { BudgetReason } from '../../engine/budget';
import { spoken } from '../tongue';
import type { Sentences } from './sentence';

/** How a budget is shared out, and why a zone is left. */
export const reasonsOfBudget = spoken('reasonsOfBudget', 'reasonsOfBudget', {
  'budget: how it is weighed': () =>
    'A zone’s loss is its area, times its weight, times what its index lacks to 100. Of all ways to spend the sum, the one that leaves least is taken; of equals, the cheapest.',
  'budget: exact to': (s) =>
    `Every way was weighed against every other, in steps of ${s.measure('m2', 'area', 4)} of loss: exact to that.`,
  'budget: range': () =>
    'The range is that of coverages and areas. Within one work all errors are taken to go one way, for one eye saw them in one light.',
  'budget: not in it': () =>
    'How well a work will turn out, how long it lasts, and the yearly wax that keeps a sound zone sound are not in these sums. A wax takes away only the loss of a worn coat.',
  'budget: stop word': () => 'A stop word was seen there. Ask the conservator before anything is done.',
  'budget: no work for it': () => 'No work with a price takes away what is left there.',
  'budget: too little money': () => 'The sum does not reach.',
  'budget: no price': () => 'Give at least one price.',
} satisfies Sentences<BudgetReason>);
