import { type FirmNeed, firmnessInSteps, firmnessNumbers } from '../../engine/firmness';
import { seedOfDraws } from '../../engine/reckoning';
import type { Reader } from '../store';
import type { Step } from './figures';
import { type Kept, rowOf } from './kept';

export interface FirmnessAsked {
  readonly do: 'firmness';
  /** Works in the order of need, with the stamps their figures must bear. */
  readonly works: readonly (readonly [work: string, stamp: string])[];
  /** What the answer will rest on. */
  readonly stamp: string;
  readonly today: string;
}

/** Redraws the order of need of these works. Nothing is told where a work's figures are not the ones asked for. */
export async function* redrawsInSteps(
  source: Pick<Reader, 'meta'>,
  { works, stamp, today }: FirmnessAsked,
): AsyncGenerator<Step, void> {
  const needs: FirmNeed[] = [];
  for (const [work, asked] of works) {
    const kept = await source.meta<Kept<FirmNeed | null>>(rowOf.need(work));
    if (kept?.stamp !== asked) return;
    if (kept.value) needs.push(kept.value);
  }
  const steps = firmnessInSteps(needs, seedOfDraws);
  for (;;) {
    const step = steps.next();
    if (step.done) {
      yield { rows: [[rowOf.firmness, { stamp, from: today, until: null, value: step.value }]] };
      return;
    }
    yield { done: step.value, all: firmnessNumbers.draws.value };
  }
}
