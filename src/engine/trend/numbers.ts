import type { Source } from '../trade';

interface Row {
  readonly value: number;
  readonly what: string;
  readonly source: Source;
}

const own = (value: number, what: string): Row => ({
  value,
  what,
  source: { text: 'Chosen for this project', sure: 'own choice' },
});

/** The numbers a trend rests on. */
export const trendNumbers = {
  rounds: own(
    5,
    'Rounds from which the word trend may be used: with four, even a series that only rises comes by chance one time in twelve',
  ),
  chance: own(0.05, 'Chance at most of a series going one way so far, for the word trend'),
  someRounds: own(3, 'Rounds from which "each time so far" is said'),
  coverage: own(0.9, 'Coverage asked of the interval of ranked slopes; what is attained is printed'),
  spans: own(2, 'Times the observed span, from its first round on, past which a forecast is too far to tell'),
  seen: own(0.5, 'Share of the area that has to be seen in a round for it to stand in the series of the work'),
} as const satisfies Record<string, Row>;

/** Days of a year. */
export const daysOfYear = 365.25;
