import { spoken } from '../tongue';

/** The season log of one work: what was done in a year, on one page. */
export const paperSeason = spoken('paperSeason', 'paperSeason', {
  title: 'Season log',
  titleOf: (year: string) => `Season log ${year}`,
  reader: 'facilities, auditor',
  choice: (work: string, year: string) => `${work}, ${year}`,

  left: 'Not done',
  nothing: (year: string) => `Nothing is written down for ${year}.`,
  allDone: 'Every zone was washed and coated in the year, as far as the logbook says.',
  notWashed: (zones: string) => `Not washed: ${zones}.`,
  notCoated: (zones: string) => `Not coated: ${zones}.`,
  notReached: (day: string, what: string) => `${day}, not reached: ${what}`,

  done: 'What was done',
  columns: {
    date: 'Date',
    method: 'Method',
    product: 'Product and batch',
    people: 'People and hours',
    gate: 'Air and surface',
    zones: 'Zones',
  },
  dash: '–',
  gateNone: 'no reading',
  gateNotAsked: 'not asked',
  gateHow:
    'Air and surface: what the reading said, when, and how far the surface was over the dew point. Hours as written down by those who worked; no error is known of them.',
  overridden: (by: string, why: string) => `Gone on by ${by}: ${why}`,

  sums: 'In all',
  hours: (role: string, hours: string, unknown: number) =>
    `${role}: ${hours} h${unknown === 0 ? '' : unknown === 1 ? ', once not written down' : `, ${unknown} times not written down`}`,
  product: (product: string, times: string, amount: string) => `${product}: ${times}${amount && `, ${amount}`}`,
  times: (n: number, figure: string) => (n === 1 ? 'once' : `${figure} times`),
  cost: (amount: string) => `Cost written down: ${amount}`,
  rounds: (days: string) => `Rounds: ${days}.`,
  looks: (n: number, figure: string, clear: string, green: string, unsure: string) =>
    `${n === 1 ? '1 look' : `${figure} looks`} in passing: ${clear} clear, ${green} with green back, ${unsure} not sure.`,
  readings: 'Readings of the air',
  reading: (day: string, time: string, before: string, said: string, margin: string) =>
    `${day}, ${time}, before ${before}: ${said}, ${margin} over the dew point`,
  before: { wash: 'washing', wax: 'waxing', other: 'other work' },
  notes: 'Notes',
  note: (day: string, note: string) => `${day}: ${note}`,
  signs: { did: 'for the work done', checked: 'checked' },
  lacks: {
    nothing: 'Nothing is written down for this year.',
    people: (n: number) =>
      n === 1 ? '1 entry does not say who worked and how long.' : `${n} entries do not say who worked and how long.`,
    batch: (n: number) => (n === 1 ? '1 coating names no batch.' : `${n} coatings name no batch.`),
    reading: (n: number) =>
      n === 1 ? '1 coating has no reading of air and surface.' : `${n} coatings have no reading of air and surface.`,
  },
});
