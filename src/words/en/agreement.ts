import { spoken } from '../tongue';

const things = (n: number): string => (n === 1 ? '1 thing' : `${n} things`);

/** Words of the screen Two surveyors: how far two people who did one round agreed. */
export const agreement = spoken('agreement', 'agreement', {
  title: 'Two surveyors, one round',
  link: 'Two surveyors',
  lead: 'Where two people judged the same zones beside each other: how far they agree, and where to look together.',
  back: 'Back to the sculpture',
  gone: 'This sculpture is not on this device.',
  none: 'No round of this work was done twice yet.',
  how: 'To get there, a second person makes the same round within two weeks, on her own tablet and without seeing the first. Carry it in, and say that the two are apart, not one.',
  toCarry: 'To Carry',
  choose: 'The two rounds',
  pair: (day: string, one: string, other: string) => `${day}: ${one} and ${other}`,
  someone: 'somebody',

  short: 'In short',
  zones: (both: number, all: number) =>
    both === all ? `All ${all} zones were judged by both.` : `${both} of ${all} zones were judged by both.`,
  kinds: (both: number, all: number) => `Of ${things(all)} that either of you recorded, you both recorded ${both}.`,
  onlyOne: (who: string, n: number) => `${who} alone recorded ${n}.`,
  severity: (alike: number, n: number) => `Of the ${n} you both recorded, you gave ${alike} the same severity.`,
  coverage: (who: string, other: string, share: string, range: string) =>
    `Where ${who} says 20 %, ${other} says about ${share} (${range}).`,
  nothing: 'Neither of you recorded anything in these zones.',

  figures: 'In figures',
  what: 'What',
  figure: 'Figure',
  n: 'Cases',
  kappa: 'What is there: Cohen’s kappa',
  weighted: 'Severity: weighted kappa',
  icc: 'Coverage: ICC(2,1), on the logit',
  figuresWhat: '1 is full agreement, 0 no more than chance. Each with its 90 % range.',
  notTold: 'cannot be told',

  apart: 'Where you differ',
  apartWhat: 'Look at these together, on the work, and agree what you call them.',
  apartNone: 'You do not differ anywhere.',
  zone: 'Zone',
  kind: 'Kind',
  why: {
    'found by one only': 'recorded by one only',
    origin: 'another origin',
    severity: 'another severity',
    coverage: 'another coverage',
  },
  differs: 'Differs by',
  notRecorded: 'not recorded',
  sources:
    'Kappa after Cohen 1960 and 1968, its range after Fleiss, Cohen and Everitt 1969; ICC after Shrout and Fleiss 1979. All may be low when nearly everything is alike: read the sentences first.',
} as const);
