import { spoken } from '../tongue';

/** The sheet for those who are asked for money: two pages. */
export const paperFund = spoken('paperFund', 'paperFund', {
  title: 'Funder sheet',
  reader: 'a donor or a grant officer',
  lead: (work: string, campaign: string) =>
    `This sheet says what a gift makes possible: ${campaign}, for ${work}, and the care that keeps it so.`,
  leadOfAll: (fund: string, collection: string) =>
    `This sheet says what a gift makes possible: ${fund}, for the works of ${collection}.`,

  significance: 'Why this work matters',
  significanceLabel: 'Why this work matters, in your own words',
  significanceHint: 'Who made it, for whom, what it is to this place. No one but you can write this.',
  identity: (title: string, maker: string, date: string, materials: string) =>
    [`${title}`, maker && `, ${maker}`, date && `, ${date}`, materials && `. ${materials}`, '.'].join(''),

  opportunity: 'What can be done now',
  surface: (work: string, green: string, all: string, day: string) =>
    `Of the ${all} of surface of ${work}, ${green} were green in the round of ${day}.`,
  surfaceHow: (low: string, high: string) =>
    `Judged zone by zone by eye; in nine cases of ten it lies between ${low} and ${high}.`,
  path: (title: string, does: string) => `The way that was chosen: ${title}. ${does}`,
  chosenBy: (day: string, roles: string) => `It was decided on ${day}${roles && ` and signed: ${roles}`}.`,
  noPath: 'Which way is taken is not decided yet.',
  cannot: (what: string) => `What cannot be taken back is told beforehand: ${what}`,

  outcome: 'How we shall know that it worked',
  outcomeMonths: (now: string, then: string, level: string) =>
    `A good month is one in which even the worst zone shows less than ${level} of green. Now there are ${now} of them in a year; after the work there are to be ${then}.`,
  outcomeMonthsOnly: (then: string, level: string) =>
    `A good month is one in which even the worst zone shows less than ${level} of green. After the work there are to be ${then} of them in a year.`,
  outcomeNone: 'How many good months a year the work is to bring is not written down yet.',
  outcomeHow:
    'Counted from looks every four to eight weeks from spring to autumn, and from a round over the whole surface each year.',
  outcomeDate: (day: string) =>
    `The money is wanted by ${day}. A year after the work is done the givers are told, in writing and with photos from the same spot, whether it did what was promised.`,
  outcomeNoDate:
    'A year after the work is done the givers are told, in writing and with photos from the same spot, whether it did what was promised.',
  outcomeLabel: 'What you promise to measure, and by when',
  outcomeHint: 'One number and one day. What stands here now was put together from the record.',

  budget: 'What it costs',
  caption: (day: string) => `Costs at the prices of ${day}, and what pays for them`,
  line: 'Cost',
  amount: 'Amount',
  today: 'Today',
  inHand: 'In hand or spent',
  pledged: 'Pledged adds',
  hoped: 'Hoped adds',
  sum: 'All together',
  todayHow: (percent: string) =>
    `“Today”: the same costs, risen by ${percent} % a year since then. What gifts pay is reckoned against these; each gift pays only for what its giver allows.`,
  later: (one: string, three: string, percent: string) =>
    `If prices rise by ${percent} % a year it will come to ${one} a year after the day of the prices, and to ${three} after three.`,
  quote: (who: string, day: string) => `The price of the work itself was quoted by ${who} and holds until ${day}.`,
  quoteOver: (who: string, day: string) =>
    `The price of the work itself was quoted by ${who}; the quote ended on ${day} and is to be renewed.`,
  noLines: 'What it costs is not written down yet.',
  noMoney: 'The amounts are of more than one currency and are not added up.',

  state: 'Where the fund stands',
  gifts: (n: number) => (n === 1 ? '1 gift' : `${n} gifts`),
  states: { inHand: 'In hand', pledged: 'Pledged', hoped: 'Hoped for' },
  stateHow: {
    inHand: 'It is on the account, or has paid for something already.',
    pledged: 'Somebody gave their word; it has not come yet.',
    hoped: 'Asked for, not answered. Nobody has this money.',
  },
  inKind: (amount: string) => `Of what is pledged or hoped for, ${amount} is work or goods, not money.`,
  open: (amount: string) => `If every pledge comes, ${amount} of today’s costs are still without a giver.`,
  openNone: 'If every pledge comes, all of today’s costs are paid for.',
  three: 'These are three sums and are never made one.',

  upkeep: 'The promise of upkeep',
  upkeepIs: (yearly: string, percent: string, endowment: string) =>
    `The care afterwards costs ${yearly} a year. An endowment of ${endowment}, of which ${percent} % may be spent each year, carries it for good; it is asked for together with the work, so that what is given once is not lost again.`,
  upkeepNone:
    'What the care afterwards costs is not written down yet. Nothing should be given for a work whose upkeep is not told.',
  promised: 'What is promised to givers',

  benefit: 'What the public has of it',
  benefitLabel: 'What the public has of it, in your own words',
  benefitHint: 'Who comes, what they see, what they are told, what stays open while the work goes on.',

  doing: 'Who does the work',
  whoTaken: (who: string, named: string) => `${who} was chosen${named && `; on the job: ${named}`}.`,
  whoOversees:
    'A conservator decides by what means the surface is treated, and oversees it. Heat and scaffolds are for licensed and insured firms.',
  record:
    'Every step is photographed and written down. The record is kept in open formats that can be read without any one program, and a copy is kept off the site.',

  lacks: {
    significance: 'why this work matters, in your own words',
    benefit: 'what the public has of it, in your own words',
    upkeep: 'what the upkeep costs a year',
    promise: 'what is promised to givers',
    lines: 'what must be paid for',
    wanted: 'the day by which the money is wanted',
    months: 'good months a year of the way that was chosen',
  },
});
