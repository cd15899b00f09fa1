import { unitOf } from '../format';
import { spoken } from '../tongue';

const rounds = (n: number): string => (n === 1 ? '1 round' : `${n} rounds`);

/** Words of the screen Over the years. Numbers come in already written by the formatter. */
export const overTime = spoken('overTime', 'overTime', {
  title: 'Over the years',
  lead: 'How this work has gone from round to round, how long its coatings held, and what comes next if care goes on as now.',
  link: 'Over the years',
  reading: 'Working it out …',
  gone: 'This sculpture is not on this device.',
  noRounds: 'No round has been made of this sculpture yet. The years begin with the first.',
  startRound: 'Start a round',
  back: 'Back to the sculpture',

  chooseZone: 'Show',
  wholeWork: 'The whole work',
  index: 'Condition index',
  active: { green: 'Active green', bare: 'Bare metal', scale: 'Hard-water scale' },
  actionLevel: (level: string) => `action level ${level}`,

  subject: {
    index: 'The condition index',
    green: 'The area of active green',
    bare: 'The area of bare metal',
    scale: 'The area of hard-water scale',
  },
  unit: { index: 'points', m2: 'm²' },
  trend: {
    trend: (what: string, up: boolean, a: string, range: string, n: number) =>
      `${what} ${up ? 'rises' : 'falls'} by ${a} a year (${range}): a trend over ${rounds(n)}.`,
    rising: (what: string, n: number) =>
      `${what} has risen each time so far, over ${rounds(n)}: five are needed before that may be called a trend.`,
    falling: (what: string, n: number) =>
      `${what} has fallen each time so far, over ${rounds(n)}: five are needed before that may be called a trend.`,
    none: (what: string, n: number) => `${what} shows no trend over ${rounds(n)}.`,
    few: (what: string, n: number) =>
      `${what}: ${rounds(n)} since the surface last became another one. Three are needed to say which way it goes.`,
    none0: (what: string) => `${what}: no round to tell it from.`,
  },
  forecast: (day: string, value: string, range: string) =>
    `By the next round, about ${day}: ${value} (${range}), if care goes on as now.`,
  otherSurveyor: (who: string) => `another surveyor: ${who}`,
  someone: 'not said who',

  growth: 'Where the change is',
  growthWhat: (from: string, to: string) =>
    `What each zone added to the active area from ${from} to ${to}, in ${unitOf('area')}.`,
  sinceBreak: (zone: string, day: string) => `${zone} (from ${day})`,
  growthNone: 'No zone changed in active area over these rounds.',
  grewBy: (m2: string) => `grew by ${m2}`,
  shrankBy: (m2: string) => `shrank by ${m2}`,

  holds: 'How long the coating held',
  holdsWhat:
    'Each bar runs from the last look that saw the zone clear to the first that saw the green. Nobody saw the day itself.',
  holdsNone: 'No coating is recorded for this work. Holds begin with the first wax in the logbook.',
  toLogbook: 'Open the logbook',
  zone: (letter: string, name: string) => `Zone ${letter}, ${name}`,
  barsTitle: 'Months from the coating to the green',
  yearlyOnly: (n: number) =>
    n === 1 ? 'Show 1 zone of which only the rounds tell' : `Show ${n} zones of which only the rounds tell`,
  yearlyOnlyHide: 'Hide the zones of which only the rounds tell',
  events: {
    spot: 'Back means: the first bright green spot seen.',
    cover: 'Back means: green in the metal at the return level in a round.',
  },
  words: {
    'getting shorter': 'Getting shorter',
    'getting longer': 'Getting longer',
    'looks shorter, not proven': 'Looks shorter, not proven',
    'no sign of it': 'No sign of getting shorter',
    'too few': 'Too few to say which way it goes',
  },
  lastPair: {
    'shorter than the last one': 'The last hold was shorter than the one before.',
    'longer than the last one': 'The last hold was longer than the one before.',
    overlap: 'The last two overlap: which was longer nobody can say.',
  },
  waxAgain: (day: string, low: string, high: string) => `Wax again by ${day} (${low} to ${high}).`,
  waxAgainOpen: (day: string) => `Wax again by ${day}.`,
  asks: 'Waxing does not hold here: ask the conservator.',
  nextLook: (day: string) => `Next look: ${day}.`,
  nextLookBetween: (low: string, high: string) => `A look between ${low} and ${high} would tell nearly as much.`,
  ifCoated: (on: string, low: string, high: string) =>
    `If coated on ${on}, a look between ${low} and ${high} would tell most.`,
  why: 'Why?',
  whyHide: 'Hide why',
  onNow: {
    clear: (day: string) => `On it now: coated ${day}, clear when last looked at.`,
    back: (day: string) => `On it now: coated ${day}; the green is back.`,
    'not clean': (day: string) => `On it now: coated ${day}; green stood there right after.`,
    unknown: (day: string) => `On it now: coated ${day}; nobody has looked since.`,
  },

  takesOff: 'What takes off the index',
  takesOffWhat: (missing: string) =>
    `In the last round ${missing} points are missing from 100. Losses multiply; each finding’s part is shared out so that the parts add up.`,
  takesOffNone: 'Nothing takes off the index: no finding in the last round.',
  points: (n: string) => `${n} points`,
  more: (n: number) => (n === 1 ? 'Show 1 more finding' : `Show ${n} more findings`),
  moreHide: 'Show fewer findings',
  inZone: (kind: string, letter: string) => `${kind}, zone ${letter}`,

  done: 'What was done',
  doneNone: 'Nothing is written in the logbook.',
  doneOn: (day: string, what: string) => `${day}: ${what}`,
  breaks: 'the surface is another one since',
  seen: { seen: 'judged', carried: 'carried over', 'not-looked': 'not looked at' },
  cells: 'Which zones were seen',
  cellsWhat: 'A filled cell was judged, an open one was not looked at, a slanted one was carried over.',
} as const);
