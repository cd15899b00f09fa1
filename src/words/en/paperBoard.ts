import { list } from '../format';
import { spoken } from '../tongue';

const years = (n: string): string => (n === '1' ? 'one year' : `${n} years`);

/** The case a board decides on: one page, and two of annex. */
export const paperBoard = spoken('paperBoard', 'paperBoard', {
  title: 'Board case',
  reader: 'the board',
  heading: (campaign: string) => `For decision: ${campaign}`,
  lead: (work: string, ways: string) =>
    `The board is asked how ${work} is to be cared for from here on. ${ways} ways stand beside each other here; the annex says what each does, what it risks and where the figures come from.`,
  leadNoWays: (work: string) =>
    `The board is asked how ${work} is to be cared for from here on. The ways to go on are not yet written down.`,
  noPair: 'No two photos from the same spot are kept of this work yet.',
  green: {
    name: 'Green today',
    how: (low: string, high: string, all: string) =>
      `${low} to ${high} (90 %), of ${all} of surface; judged zone by zone by eye.`,
    none: 'Nobody has looked yet.',
  },
  change: {
    name: 'More each year',
    how: (low: string, high: string, rounds: string) => `${low} to ${high}, over ${rounds} rounds; beyond chance.`,
    unsure: (low: string, high: string, rounds: string) =>
      `${low} to ${high}, over ${rounds} rounds; chance alone could do that.`,
  },
  price: {
    name: (letter: string) => `Price of way ${letter}, once`,
    how: (contingency: string) => `Prices as they were given, ${contingency} for what nobody foresees.`,
  },

  ways: 'The ways to go on',
  caption: (n: string, rate: string) =>
    `Costs spread evenly over ${years(n)}; money is reckoned to earn ${rate} % a year beyond the rise of prices`,
  columns: {
    way: 'Way',
    yearly: 'Cost a year',
    months: 'Good months a year',
    perMonth: 'Cost of a good month',
    steps: 'What cannot be taken back',
  },
  monthsHow:
    'A good month is one in which even the worst zone stays under the level at which green counts as back. Ranges, two other rates and the prices: see the annex.',
  steps: (count: string, size: string | undefined) =>
    count === '0' ? 'nothing' : `${count} ${size === undefined ? '' : `${size} `}${count === '1' ? 'step' : 'steps'}`,
  sizes: { small: 'small', large: 'large' },
  notKnown: 'not known',
  oneWay:
    'Only one way is written down. A board that is shown one way has nothing to decide: at least going on as now belongs beside it.',
  noWays: 'No way to go on is written down, so there is nothing here to decide on yet.',
  noMoney:
    'The record this paper was made from holds no prices. It tells what would be done and says nothing of money.',

  motion: 'The motion',
  motionDrafted: (m: {
    readonly work: string;
    readonly title: string;
    readonly price: string;
    readonly contingency: string;
    readonly upkeep: string;
    readonly causes: boolean;
    readonly care: string;
    readonly review: string;
  }) =>
    [
      `That ${m.work} be cared for as in “${m.title}”`,
      m.price && `, at a price of up to ${m.price}, of which ${m.contingency} is for what nobody foresees`,
      m.upkeep
        ? `, once the money for the work and for its upkeep of ${m.upkeep} a year is there`
        : ', once the money for it is there',
      m.causes ? ' and what feeds the damage has been dealt with' : '',
      '; that a conservator decide by what means it is done and oversee it',
      m.care ? `; and that until then the work be kept as now (“${m.care}”)` : '',
      m.review ? `. The board looks at this again on ${m.review}.` : '.',
    ].join(''),
  motionNoWay: (work: string) =>
    `That the ways to go on with ${work} be put before the board again, each with its price, what it gives and what cannot be taken back.`,
  motionHint: 'As it is to be voted on. What stands here now was put together from the record.',
  motionLabel: 'Text of the motion',

  way: (letter: string) => `way ${letter}`,
  point: 'Point',
  each: 'What each way is',
  eachCaption: 'The ways, point by point',
  where: (letters: string) => `Zones ${letters}`,
  whole: 'the whole work',
  facts: {
    does: 'What is done',
    where: 'Where',
    who: 'Who may do it',
    months: 'Good months a year',
    costs: 'What is paid',
    irreversible: 'What cannot be taken back',
    risks: 'What may go wrong',
  },
  cost: (name: string, amount: string, when: string) => `${name}: ${amount}, ${when}`,
  none: 'nothing',

  rates: 'The same at three rates',
  ratesCaption: (n: string, currency: string) =>
    `Cost a year and of a good month over ${years(n)}, in ${currency}, each with its range`,
  yearlyAt: (rate: string) => `A year, at ${rate} %`,
  monthlyAt: (rate: string) => `A good month, at ${rate} %`,
  range: (low: string, high: string) => `${low} to ${high}`,
  andMore: (low: string) => `${low} and more`,
  ratesHow: (quote: string, estimate: string, madeUp: string) =>
    `Ranges: a quote is taken to be met within ${quote}, an estimate within ${estimate}, a price nobody gave within ${madeUp}. These are our own assumptions. Prices hold for this year and the next, and rise from then on. The rate is what money earns beyond the rise of prices.`,
  against: (name: string) => `What speaks against ${name}`,
  againstNone: 'Neither its figures nor the record hold anything against it.',
  whatIfCaption: (name: string, per: 'good month' | 'year', cost: string) =>
    `What a ${per} of ${name} would cost instead of ${cost}`,
  what: 'What is otherwise',
  from: 'At least',
  to: 'At most',
  turns: 'Better buy then',
  same: 'the same',
  whatIfNext: (name: string, cost: string) => `The next best is ${name}, at ${cost}.`,

  waiting: 'The price of waiting',
  waitingCaption: (name: string, currency: string) => `What waiting with ${name} costs, in ${currency}`,
  waits: (n: number) => (n === 1 ? 'One year' : `${n} years`),
  waitColumns: {
    wait: 'Waiting',
    price: 'Price then',
    rise: 'Rise of prices',
    care: 'Care meanwhile',
    growth: 'More green',
    extra: 'More than today',
  },
  waitingNone: 'No way here has a price that is paid once, so waiting has no price that could be told.',

  causes: 'What feeds the damage',
  money: 'The money',
  moneyState: (inHand: string, pledged: string, hoped: string) =>
    `In hand ${inHand}; pledged ${pledged}; hoped for ${hoped}. These are three sums and not one: a promise is not yet money, and a hope is less.`,
  upkeep: (yearly: string, percent: string, endowment: string) =>
    `The upkeep after the work costs ${yearly} a year. An endowment of which ${percent} % may be spent each year would have to hold ${endowment} to carry it.`,
  noFund: 'No fund is written down for it.',
  decided: 'What was decided so far',
  decidedOn: (day: string, title: string) => `${day}: ${title}`,
  chosen: (what: string) => `Chosen: ${what}`,
  refused: (what: string, why: string) => `Refused: ${what}. ${why}`,
  dissent: (what: string) => `Against it spoke: ${what}`,
  consulted: (who: readonly string[]) => `Asked were ${list(who)}.`,
  wires: (what: readonly string[]) => `It is to be looked at again if ${what.join('; or if ')}.`,
  lowered: (wire: string) => wire.charAt(0).toLowerCase() + wire.slice(1),
  review: (day: string, past: boolean) => `It ${past ? 'was' : 'is'} to be looked at again on ${day}.`,
  notDecided: 'Nothing was decided on it before.',
  chair: 'For the board',
  proposer: 'Put to the board by',
  who: 'Whether a surface is stripped, by what means and to what colour is for a conservator to say, with the artist or the estate and the owner. This paper reckons and decides nothing.',
  lacks: {
    pair: 'two photos from the same spot, years apart',
    ways: 'at least two ways to go on, one of them as now',
    prices: 'prices for at least two ways',
    chosen: 'which way the campaign follows',
    round: 'a finished round',
    causes: 'a word on what feeds the damage',
  },
});
