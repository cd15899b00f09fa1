import { named } from './named';
import type { Source } from './source';

/** One touch of the coverage ladder. Shares of the zone, 0 to 1; `low` and `high` are the step's bin. */
export interface LadderStep {
  readonly id: string;
  /** As it stands on the button, in percent. */
  readonly label: string;
  readonly name: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly source: Source;
}

const source: Source = {
  text: 'Twelve steps, fine at the low end as in the grading of rust on painted steel; limits our own: half way to the next step, for the eye goes to the nearest one. Step "<1" ends at 1 %, as it says.',
  sure: 'own choice',
};

const step = (label: string, value: number, low: number, high: number, name = `about ${label} %`): LadderStep => ({
  id: label,
  label,
  name,
  value,
  low,
  high,
  source,
});

/** 0 is "looked, none there". The bins of the other steps meet and reach from 0 to the whole zone. */
export const ladder: readonly LadderStep[] = named('ladder', [
  step('0', 0, 0, 0, 'looked, none there'),
  step('<1', 0.005, 0, 0.01, 'under 1 %'),
  step('3', 0.03, 0.01, 0.04),
  step('5', 0.05, 0.04, 0.075),
  step('10', 0.1, 0.075, 0.125),
  step('15', 0.15, 0.125, 0.175),
  step('20', 0.2, 0.175, 0.25),
  step('30', 0.3, 0.25, 0.35),
  step('40', 0.4, 0.35, 0.45),
  step('50', 0.5, 0.45, 0.6),
  step('70', 0.7, 0.6, 0.8),
  step('90+', 0.9, 0.8, 1, '90 % or more'),
]);

/** The step whose bin holds a share of 0 to 1; a share on a limit belongs to the lower step. */
export const ladderStepOf = (share: number): LadderStep => {
  const found = ladder.find((candidate) => share <= candidate.high);
  if (!found) throw new RangeError(`Coverage is a share from 0 to 1, and ${share} is more than the whole zone.`);
  return found;
};
