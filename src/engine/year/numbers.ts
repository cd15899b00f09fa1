import type { Source } from '../trade';

export interface YearNumber {
  readonly value: number;
  /** Where nothing is known yet, how little and how much it may be. */
  readonly low?: number;
  readonly high?: number;
  /** What it is, with its unit. */
  readonly what: string;
  readonly source: Source;
}

const own = (value: number, what: string, range?: readonly [number, number]): YearNumber => ({
  value,
  ...(range ? { low: range[0], high: range[1] } : {}),
  what,
  source: { text: 'Chosen for this project, until the record tells her own pace', sure: 'own choice' },
});

/** Every number the plan of a year rests on. */
export const yearNumbers = {
  setUp: own(15, 'Setting up and putting away at a work, minutes', [10, 25]),
  oneTouch: own(1, 'A zone answered in one touch, minutes', [0.5, 2]),
  withFinding: own(2.5, 'A zone with findings to judge, minutes', [1.5, 5]),
  station: own(1.5, 'A photo from a station, minutes', [1, 3]),
  ladder: own(4, 'Moving ladder or lift to a zone, minutes', [2, 8]),
  look: own(3, 'A look from the ground, minutes', [2, 6]),
  labour: {
    value: 1,
    low: 0.5,
    high: 2,
    what: 'Washing and waxing, m2 an hour for one person',
    source: {
      text: 'From one estimate for a small work of two figures, about 3 hours to wash and wax, as quoted; taken as 1 m2 an hour',
      sure: 'own choice',
    },
  },
  shortestVisit: own(10, 'Two answers closer together than this were typed in, not walked, seconds'),
  longestVisit: own(30, 'Two answers further apart than this had a pause between, minutes'),
  visitsForPace: own(8, 'Zones timed before her own pace takes the place of the assumed one'),
  waxingsForPace: own(2, 'Waxings with hours before her own pace takes the place of the estimate'),
  roundsForQuiet: own(3, 'Rounds before a work may be called quiet'),
  secondWaxUnder: own(
    7,
    'Where a coating is expected to keep the green away no longer than this, a second wax, months',
  ),
  secondWaxShare: own(0.25, 'Share of the area from which that counts for the work'),
  mostOfWork: own(0.5, 'Share of the area from which a coating counts as one of the work'),
  exactVisits: own(12, 'Works up to which the shortest walk is sought among all orders'),
  roundNearMove: own(60, 'A round tells the state before or after a move up to this many days from it, days'),
  dayOfWork: own(8, 'Hours of work in a day outdoors, setting up and meals included, hours'),
  minutesInHour: own(60, 'Minutes in an hour'),
} as const satisfies Record<string, YearNumber>;
