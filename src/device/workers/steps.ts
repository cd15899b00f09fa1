import type { Reader } from '../store';
import type { Job } from './asked';
import { figuresInSteps, type Step } from './figures';
import { redrawsInSteps } from './redraws';

/** The work itself, the same in the worker and in place. */
export const stepsOf = (source: Omit<Reader, 'close'>, job: Job): AsyncGenerator<Step, void> =>
  job.do === 'figures' ? figuresInSteps(source, job) : redrawsInSteps(source, job);
