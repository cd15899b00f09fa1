import { constants } from '../condition';
import type { Source } from '../trade';

interface FirmnessNumber {
  readonly value: number;
  /** What it is, with its unit. */
  readonly what: string;
  readonly source: Source;
}

const own = (value: number, what: string, why = 'Our own choice.'): FirmnessNumber => ({
  value,
  what,
  source: { text: why, sure: 'own choice' },
});

/** Every number the redraws rest on, beside those of engine/condition. */
export const firmnessNumbers = {
  draws: own(1000, 'Redraws of the order'),
  weight: own(0.2, 'Each hazard is redrawn evenly within this share to each side, one factor for a kind in all zones'),
  firmFrom: own(0.9, 'Share of redraws from which a place is called firm'),
  personSd: own(
    constants.betweenPersonsSd.value / Math.SQRT2,
    'Bias of one person, shared by all that he or she judged by eye: standard deviation on the logit',
    'Two persons differ by the difference of their biases, half of its variance each.',
  ),
} as const satisfies Record<string, FirmnessNumber>;

/** A zone is asked whether it stays among the first so many: the least of these that holds its own rank. */
export const groupsOfPlaces: readonly number[] = [1, 3, 5, 10, 20, 30, 50, 100, 200, 500, 1000, 2000, 5000, 10_000];
