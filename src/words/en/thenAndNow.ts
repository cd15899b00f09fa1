import { unitOf } from '../format';
import { spoken } from '../tongue';

/** Words of the screen Then & now. Numbers come in already written by the formatter. */
export const thenAndNow = spoken('thenAndNow', 'thenAndNow', {
  title: 'Then & now',
  lead: 'This round against an earlier one: what changed, what did not, and how sure you can be.',
  thenHead: 'Then',
  now: 'Now',
  chooseThen: 'Then: the earlier round',
  chooseNow: 'Now: the later round',
  reading: 'Reading the two rounds …',

  noRounds: 'No round has been made of this sculpture yet. Then & now needs two.',
  oneRound: 'There is one round so far. Then & now will speak after the next one.',
  startRound: 'Start a round',
  sameRound: 'Then and now are the same round. Choose two different ones.',
  notFound: 'One of these two rounds is not on this device. Choose another.',
  sculptureNotFound: 'This sculpture is not on this device.',

  notAlike: 'These two rounds are not alike',
  notAlikeWhat: 'Differences below may come from how and when you looked, not from the bronze.',
  alike: 'These two rounds are of one kind and state, so they can be compared.',

  verdict: {
    worse: 'Worse',
    better: 'Better',
    'no sure change': 'No change you can be sure of',
    carried: 'Carried, not judged again',
    'not comparable': 'Not comparable',
  },
  clearlyVerdict: (verdict: string) => `Clearly ${verdict.toLowerCase()}`,
  alone: 'Alone, could be chance',
  named: {
    new: 'New',
    gone: 'Gone',
    severity: 'Other severity',
    activity: 'Other activity',
    count: 'Other count',
  },
  namedFrom: (what: string, from: string, to: string) => `${what}: ${from} then, ${to} now`,
  origins: { dirt: 'taken for dirt', stain: 'stain from above' },

  headline: 'In short',
  counts: {
    worse: (n: number) => (n === 1 ? '1 finding worse' : `${n} findings worse`),
    better: (n: number) => (n === 1 ? '1 finding better' : `${n} findings better`),
    'no sure change': (n: number) => `${n} with no change you can be sure of`,
    carried: (n: number) => `${n} carried, not judged again`,
    'not comparable': (n: number) => `${n} not comparable`,
  },
  nothingToCompare: 'There is nothing in these two rounds that can be compared.',
  zonesBoth: (both: number, all: number) =>
    both === all
      ? `Compared over all ${all} zones: each was looked at both times.`
      : `Compared over the ${both} of ${all} zones looked at both times.`,
  index: 'Condition index',
  activeArea: 'Active area',
  active: { green: 'Green', bare: 'Bare metal', scale: 'Hard-water scale' },

  growth: 'Which zones carry the change',
  growthWhat: `What each zone adds to the change of active area, in ${unitOf('area')}.`,
  growthBoth: `What each zone adds to the change of active area, in ${unitOf('area')}. Bars to the right grew, open bars to the left shrank.`,
  difference: 'changed by',
  growthNone: 'No active area changed in the zones looked at both times.',
  grewBy: (m2: string) => `grew by ${m2}`,
  shrankBy: (m2: string) => `shrank by ${m2}`,

  sure: 'How sure is this page?',
  falseOnes: (comparisons: number, expected: string) =>
    comparisons === 1
      ? `One comparison stands on this page. By chance alone, about ${expected} of such calls would be false.`
      : `${comparisons} comparisons stand on this page. By chance alone, about ${expected} of them would look changed though nothing did.`,
  aloneWhat:
    'A change marked “alone, could be chance” did not hold once all comparisons were weighed together. Look again before you act on it.',
  smallest: (from: string, down: string, up: string) =>
    `The smallest difference we would call real here: from ${from} % down to ${down} or up to ${up}.`,
  smallestDown: (from: string, down: string) =>
    `The smallest difference we would call real here: from ${from} % down to ${down}.`,
  smallestUp: (from: string, up: string) =>
    `The smallest difference we would call real here: from ${from} % up to ${up}.`,

  smallestIndex: (points: string) => `The smallest difference we would call real here: ${points} points.`,
  smallestArea: (m2: string) => `The smallest difference we would call real here: ${m2}.`,
  since: 'Compare with',
  sinceFirst: 'Since the first round',
  sinceLast: 'Since the last round',
  longView: 'The longer view',
  longViewLead: 'What the rounds of one kind show together, and what comes next if care goes on as now.',

  changed: 'What changed, zone by zone',
  changedNone: 'No finding changed for sure between these two rounds.',
  unchangedFold: (findings: number, zones: number) =>
    `Show ${findings === 1 ? '1 finding' : `${findings} findings`} with no sure change in ${zones === 1 ? '1 zone' : `${zones} zones`}`,
  unchangedHide: 'Hide what did not surely change',
  unchanged: 'No sure change, carried or not comparable',

  zone: 'Zone',
  zoneLetter: (letter: string) => `Zone ${letter}: `,
  zoneNamed: (letter: string, name: string) => `zone ${letter}, ${name}`,
  roundNamed: (day: string) => `the round of ${day}`,
  sort: 'Sort',
  noneSeen: 'none',
  finding: 'Finding',
  verdictHead: 'Verdict',
  nothingThere: 'nothing found',
  notLooked: 'not looked',
  there: 'there',
  carriedShort: 'carried over',
  carriedSeen: (seen: string) => `carried over: ${seen}`,
  between: 'Done between the two rounds',
  betweenNone: 'Nothing is written in the logbook between these two rounds.',
  doneOn: (what: string, day: string) => `${what}, ${day}`,
  perhaps: '(perhaps between: the date is not exact)',
  breaks: '(the surface is another one since)',
  notByItself: 'The change stands beside what was done. It does not say what caused it.',
  zoneIndex: (then: string, now: string) => `Zone index ${then} then, ${now} now`,
  withRange: (value: string, range: string) => `${value} (${range})`,
} as const);
