import { spoken } from '../tongue';

const many = (n: number, one: string, more: string): string => (n === 1 ? `1 ${one}` : `${n} ${more}`);

export const budget = spoken('budget', 'budget', {
  title: 'Budget of a year',
  lead: 'Which zones to treat for a sum so that the least loss is left, what is then left undone, and what more money would do.',
  back: 'Plan',
  year: 'Year',
  readOnly: 'Another tab of this app is writing. Change things there.',
  empty: 'Nothing to weigh yet',
  emptyWhat: 'Walk a round first: its findings tell what there is to lose.',

  prices: 'What work costs',
  pricesNone:
    'Give the prices you know: of a wash, a wax, a local treatment. A price can be by the square metre, by the zone, or once for a work.',
  changePrices: 'Change prices',
  copyPrices: (year: number) => `Take over the prices of ${year}`,
  work: 'Work',
  price: 'Price',
  per: { m2: 'per m²', zone: 'per zone', work: 'once per sculpture' },
  guessed: 'Prices are as you typed them. Nobody has quoted them.',

  sum: 'Sum for the year',
  sumHint: 'Try sums: all below follows.',
  keepSum: (year: number) => `Keep as the budget of ${year}`,
  kept: 'Kept.',
  lifts: (amount: string) => `Of it ${amount} is for the lift days already planned.`,
  liftsMixed: 'The lift days are planned in another currency and are not taken off.',
  tooSmall: 'The lift days already planned cost more than this.',

  plan: 'What to do with it',
  inShort: (spent: string, sum: string, taken: string) => `${spent} of ${sum} takes away ${taken} of loss.`,
  nothing: 'Nothing with a price can be done for this sum.',
  undone: 'Left undone',
  next: (more: string, taken: string) => `With ${more} more, another ${taken} would go.`,
  allDone: 'More money would take nothing more away.',
  zone: 'Zone',
  cost: 'Costs',
  loss: 'Loss before and after',
  fromTo: (before: string, after: string) => `${before} to ${after}`,
  once: (work: string, type: string) => `${work}: once for ${type}`,
  askFirst: 'a conservator leads',
  who: 'Where a conservator leads, this says only what the money would reach. Whether and how it is done is for the conservator to say.',
  zoneOf: (work: string, letter: string, name: string) => `${work}, ${letter} · ${name}`,

  left: 'What is left undone',
  leftWhat: (n: number) => `${many(n, 'zone', 'zones')} with loss left, the most first.`,
  leftNone: 'Nothing is left.',
  stopped: (n: number) =>
    `${many(n, 'zone waits', 'zones wait')} for the conservator’s word, and no work is planned there. Keep money for the visit.`,
  more: (n: number) => `Show ${many(n, 'more zone', 'more zones')}`,
  fewer: 'Put them away',
  m2: 'Loss left',
  why: 'Why',
  notJudged: (n: number) =>
    `${many(n, 'zone was', 'zones were')} not looked at in the latest round and stay out of all sums.`,

  curve: 'How it changes with the sum',
  curveLabel: 'Loss left undone, by the sum spent',
  curveSum: 'Sum',
  curveUndone: 'Left undone',
  here: 'this sum',
  how: 'How it is weighed',
  howHide: 'Put it away',
  counted: 'What each work is counted to take away',
  countedUpTo: (share: string) => `where it covers up to ${share} of the zone`,
  countedWith: (other: string) => `together with a ${other}, where that has a price`,
  works: 'Works to weigh',
  worksWhat: 'Leave a work out where it is decided not to touch it this year. This is not kept.',
  leftOut: (works: string) => `Left out: ${works}.`,

  sheet: {
    title: (year: number) => `Prices of ${year}`,
    type: (n: number) => `Work ${n}`,
    price: (n: number) => `Price ${n}`,
    per: (n: number) => `Price ${n} is`,
    add: 'Add a price',
    remove: (n: number) => `Take price ${n} away`,
    save: 'Keep',
    saved: 'Prices kept.',
  },
});
