import type { BodyOf } from '../record';
import { dotsCoverage } from './dotsCoverage';
import { maskCoverage } from './maskCoverage';
import type { Measurement } from './measured';
import type { Size } from './point';
import { because } from './reasonCodes';
import { readSelector } from './selector';
import { tracedCoverage } from './tracedCoverage';

/** What a measurement in the record says, worked out again from what was touched: its 95 % interval and its reasons. */
export const measuredAgain = (
  measure: Pick<BodyOf<'measure'>, 'selector' | 'coverage' | 'working'>,
  size: Size,
): Measurement => {
  const zone = readSelector(measure.selector.value);
  const { answers, patches, maskShare, leftOut, inMask, outsideMask } = measure.working;
  if (zone) {
    const { method } = measure.coverage;
    if (method === 'dots' && answers !== undefined) return dotsCoverage(answers, zone, size);
    if (method === 'photo' && maskShare !== undefined) {
      const mask = leftOut === undefined ? { share: maskShare } : { share: maskShare, leftOut };
      return maskCoverage(mask, inMask ?? '', outsideMask ?? '', zone, size);
    }
    const traced = method === 'traced' && patches ? readSelector(patches.value) : undefined;
    if (traced) return tracedCoverage(traced, zone, size);
  }
  return { refused: [because('coverage: working not kept')] };
};
