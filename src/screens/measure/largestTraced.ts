import type { Measuring } from '../../actions';
import { aspectOf, boundsOf, readSelector, type Size } from '../../engine/photo';

/** Width or height, the larger, of the largest patch traced of a kind on this photo, share of its width; 0 where none was. */
export const largestTraced = ({ measures }: Measuring, kind: string, size: Size): number => {
  const traced = measures.find(({ body }) => body.kind === kind && body.coverage.method === 'traced');
  const patches = readSelector(traced?.body.working.patches?.value ?? '') ?? [];
  return patches.reduce((largest, ring) => {
    const { x, y } = boundsOf([ring]);
    return Math.max(largest, x[1] - x[0], (y[1] - y[0]) * aspectOf(size));
  }, 0);
};
