import { spoken } from '../tongue';

/** The year in one page, for a director. Numbers and dates come in already written by the formatter. */
export const paperYear = spoken('paperYear', 'paperYear', {
  title: (year: string) => `The year ${year} on one page`,
  sort: 'The year on one page',
  reader: 'the director',
  own: {
    wanted: 'Decisions wanted',
    wantedHint: 'One to a line, three at most. Until you write, the paper asks what the record asks.',
    head: 'One sentence on the year',
    headHint: 'What you would say if you had one sentence.',
  },
  notLooked: {
    all: 'Every work had a round this year, and every zone was looked at.',
    works: (names: string) => `No round this year: ${names}.`,
    zones: (work: string, zones: string) => `${work}: ${zones} not looked at.`,
  },
  state: 'State of the works',
  map: 'Plan of the garden',
  mapTold: (rows: string) => `Plan of the garden with a sign for each work. ${rows}`,
  row: (work: string, sign: string) => `${work}: ${sign}.`,
  signs: {
    0: 'circle: something in the long run at most',
    1: 'triangle: something in the next years',
    2: 'square: something soon',
    3: 'black diamond: something at once',
    none: 'broken ring: no round this year',
  },
  short: { 0: 'in the long run', 1: 'next years', 2: 'soon', 3: 'at once', none: 'no round' },
  columns: { work: 'Work', due: 'Something due', index: 'Index', before: 'Before', verdict: 'Verdict of the year' },
  how: 'Index: 100 is sound; the range holds the true figure in nine of ten cases and comes from how roughly the eye judges coverage. How soon something is due: proposed by rule after EN 16096, or as a named person set it.',
  notSaid: 'open',
  sure: 'Changes one can be sure of',
  sureNone:
    'None that could not be chance among all that was compared. What is sure of one work by itself stands in its condition report.',
  unsure: 'Changes one cannot be sure of',
  unsureNone: 'None: what seemed to move stands on the left.',
  changed: (work: string, zone: string, kind: string, from: string, to: string, since: string) =>
    `${work}, ${zone}: ${kind} from ${from} to ${to} since ${since}`,
  came: (work: string, zone: string, kind: string, to: string, since: string) =>
    `${work}, ${zone}: ${kind} came${to && `, now ${to}`}, not there in ${since}`,
  went: (work: string, zone: string, kind: string, from: string, since: string) =>
    `${work}, ${zone}: ${kind} gone, there in ${since}${from && ` (${from})`}`,
  clearlyWorse: 'clearly worse',
  clearlyBetter: 'clearly better',
  worse: 'worse',
  better: 'better',
  grown: (work: string, what: string, from: string, to: string, since: string) =>
    `${work} as a whole: ${what} not at rest from ${from} to ${to} since ${since}`,
  what: { green: 'green', bare: 'bare metal', scale: 'hard scale' },
  onlyFrom: (share: string) => `sure only above ${share}`,
  couldBeChance: 'among so many comparisons it may be chance',
  changesHow:
    'Share of the zone, judged by eye. A change counts as sure when it is larger than the error of both judgements allows, with one chance in ten of being wrong over the page.',
  wanted: 'Decisions wanted',
  wantedNone: 'None this year.',
  wire: (title: string, what: string) => `Decide anew: ${title}. What was to change our mind has come: ${what}.`,
  review: (title: string, day: string) => `Look again at the decision “${title}”, as agreed for ${day}.`,
  money: (campaign: string, work: string) => `Money for ${work}, ${campaign}: go on gathering, or stop.`,
  verdict: (work: string, verdict: string, why: string) => `${work}: ${verdict}. ${why}`,
  cost: 'Money',
  spent: (year: string) => `Spent in ${year}`,
  spentHow: (entries: string) => `Sum of ${entries} of the logbook that name a cost; the others name none.`,
  spentNone: 'No entry of the logbook names a cost.',
  lift: (year: string) => `Lift in ${year}`,
  liftHow: (days: string) => `As planned for ${days}.`,
  budget: (year: string) => `To spend in ${year}`,
  budgetHow: 'As written into the plan of the year.',
  noPlan: (year: string) => `Nothing is planned for ${year} yet.`,
  entries: (n: number, figure: string) => (n === 1 ? 'one entry' : `${figure} entries`),
  days: (n: number, figure: string) => (n === 1 ? 'one day' : `${figure} days`),
  lacks: {
    map: 'Where the works stand: the plan of the site.',
    verdicts: (names: string) => `The verdict of the year for ${names}.`,
    next: (year: string) => `A plan of ${year}: what there will be to spend.`,
  },
});
