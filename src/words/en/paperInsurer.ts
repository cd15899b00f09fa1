import { spoken } from '../tongue';

/** The note to the insurer: what was there before, how it is cared for, what is recorded of risk. No causes. */
export const paperInsurer = spoken('paperInsurer', 'paperInsurer', {
  title: 'Note to the insurer',
  reader: 'broker, insurer',
  why: 'What this note is for',
  whyHint: 'Policy, loan or claim it belongs to; a number the insurer knows. Left empty, the paper goes without.',

  condition: 'Condition as it stands',
  conditionHow: (day: string, type: string, surface: string) =>
    `Recorded on ${day} (${type}, ${surface}). What stands here was there on that day.`,
  indexHow: (share: string) =>
    `0 to 100, 100 is sound; over ${share} of the area. In brackets the 90 % range, from judging by eye.`,
  class: 'Condition class',
  classHow:
    'After EN 16096:2012, in our own words, 0 to 3: how strong visible signs are. As set by a named person, else as a rule proposes it.',
  bySetter: (name: string, by: string) => `${name}. Set by ${by}`,
  found: 'What was there before, and since when it is known',
  foundColumns: { finding: 'Finding', zones: 'Zones and coverage', since: 'First recorded' },
  foundHow:
    'Coverage is judged by eye; its range stands in the condition report. “First recorded” is the first round that names the finding there, not the day it came.',
  foundNone: 'Nothing was found in any zone looked at.',
  photos: 'Photos',

  incidents: 'What happened to it',
  incidentsNone: 'No incident is recorded.',
  incident: (day: string, sort: string, what: string) => `${day}. ${sort}: ${what}`,
  incidentDone: (what: string) => `Done: ${what}`,
  incidentOpen: 'Still open.',
  incidentClosed: (day: string) => `Closed on ${day}.`,

  upkeep: 'Proof of upkeep',
  upkeepNone: 'No care is recorded.',
  upkeepColumns: {
    year: 'Year',
    rounds: 'Surveys',
    looks: 'Looks',
    washed: 'Washed',
    coated: 'Coated',
    other: 'Other work',
  },
  upkeepHow: 'From the logbook, the rounds and the looks in passing: days as they were written down.',
  upkeepOlder: (n: number, figure: string) =>
    n === 1 ? '1 earlier year is in the archive.' : `${figure} earlier years are in the archive.`,

  contractors: 'Work by contractors and hot work',
  contractorsNone: 'No work by a contractor and no hot work is recorded.',
  campaign: (title: string, when: string, who: string) => [title, when, who].filter(Boolean).join('; '),
  campaignFrom: (first: string, last: string) => (last ? `${first} to ${last}` : `since ${first}`),
  campaignBy: (who: string) => `by ${who}`,
  work: (what: string, when: string, where: string, who: string) => [what, when, where, who].filter(Boolean).join('; '),
  hotDays: 'Days of hot work',
  hotColumns: { date: 'Date', permit: 'Permit', by: 'Authorised by', clear: 'Kept clear', watch: 'Fire watch' },
  watch: (minutes: string) => `${minutes} min asked for`,
  watchKept: (by: string) => `kept, by ${by}`,
  watchNotKept: 'nobody has written that it was kept',
  hotHow: 'As written down on the day by those named. This paper does not judge whether a rule was kept.',

  inserts: 'Inserts and their values',
  insertColumns: { insert: 'Insert', zone: 'Zone', count: 'Count', value: 'Value recorded' },
  noValue: (inserts: string) => `No value is recorded for: ${inserts}.`,
  insertsHow: 'Values as they were entered, each with its note; this paper makes none.',

  risk: 'Who carries the risk, as recorded',
  riskNone: 'The record does not say who carries the risk, on site, in transit or in treatment.',
  riskMove: (sort: string, from: string, to: string, left: string, back: string, insurance: string) =>
    `${sort}, ${from} to ${to}, ${left}${back ? ` to ${back}` : ''}: ${insurance}`,
  riskMoveNone: 'no word on insurance',
  warranty: (title: string, who: string, until: string, terms: string) =>
    `${title}: ${[who && `${who} answers for the work`, until && `until ${until}`].filter(Boolean).join(' ')}${terms ? `. ${terms}` : '.'}`,
  own: 'What else is agreed',
  ownHint:
    'Who carries the risk on site, in transit, in treatment, as your contracts say. Left empty, the paper goes without.',
  signs: 'for the owner',
  lacks: {
    values: (n: number) => (n === 1 ? '1 insert has no value.' : `${n} inserts have no value.`),
    risk: 'Who carries the risk is not recorded: say it below as your contracts do.',
    photos: 'No photo belongs to the round told of.',
    watch: 'A day of hot work has no word that the fire watch was kept.',
  },
});
