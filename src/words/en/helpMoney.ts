import { spoken } from '../tongue';

/** Help on options, decisions and money. */
export const helpMoney = spoken('helpMoney', 'helpMoney', {
  'sculpture-options': {
    title: 'Options',
    what: 'The ways to go on with one work, side by side: what each does, how long it holds, what it costs, what cannot be taken back, what speaks against it.',
    first: 'Read what the record shows. Enter at least two ways, one of them going on as now.',
    from: 'Holds of this collection first, else a published range. Costs are yours or quoted, and marked so.',
  },
  money: {
    title: 'How money is reckoned',
    what: 'Currency, rates and rises of price, for all sums of this collection.',
    first: 'Set the currency. Leave the rest as it is until a treasurer says otherwise.',
    from: 'You set it. Every sum over years is shown one point under and one over the rate as well.',
  },
  budget: {
    title: 'Budget of a year',
    what: 'Which zones to treat for a given sum, what is then left undone, and what more money would do.',
    first: 'Type the sum you have. Then move it up and down and read what changes.',
    from: 'The choice that leaves the least loss, found exactly. Prices are those you typed until they are quoted.',
  },
  funds: {
    title: 'Funds',
    what: 'Money gathered for a treatment and for the care after it.',
    first: 'Start one from the option that was chosen; its costs come along.',
    from: 'Three kinds of money stand apart and are never added into one.',
  },
  fund: {
    title: 'One fund',
    what: 'What it must pay for, what there is, what is promised and hoped for, and when it could be enough.',
    first: 'Add the gifts one by one, each with its letter and its condition.',
    from: 'Costs rise with the prices you set. The target day comes from income so far, and is a range.',
  },
  decisions: {
    title: 'Decisions',
    what: 'What was decided and why, what was refused and why, who spoke against it, and what would change our mind.',
    first: 'Write down the next decision with at least one tripwire. Leaving alone is a decision too.',
    from: 'You write it. The app watches the tripwires and says when one has come.',
  },
});
