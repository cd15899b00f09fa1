import type { Reader } from '../store';
import type { Job } from './asked';
import { figuresInSteps, type Step } from './figures';
import { firstsInSteps } from './firsts';
import { redrawsInSteps } from './redraws';
import { throughInSteps } from './through';
import { trendsInSteps } from './trends';

/** The work itself, the same in the worker and in place. */
export const stepsOf = (source: Omit<Reader, 'close'>, job: Job): AsyncGenerator<Step, void> => {
  if (job.do === 'figures') return figuresInSteps(source, job);
  if (job.do === 'firsts') return firstsInSteps(source, job);
  if (job.do === 'look through') return throughInSteps(source);
  return job.do === 'trends' ? trendsInSteps(source, job) : redrawsInSteps(source, job);
};
