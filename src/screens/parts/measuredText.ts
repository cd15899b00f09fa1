import type { MeasureOfWork } from '../../actions';
import { isRefused, measuredAgain } from '../../engine/photo';
import { share, w } from '../../words';

/** A figure measured on a photo with its 95 % range, in a few words; with its 90 % one where the photo is gone. */
export const measuredText = ({ measure, photo }: Pick<MeasureOfWork, 'measure' | 'photo'>): string => {
  const { width, height } = photo?.body ?? {};
  const { coverage } = measure.body;
  const again = width && height ? measuredAgain(measure.body, { width, height }) : undefined;
  const { value, low, high } = again && !isRefused(again) ? again : coverage;
  const way = w.measure.wayShort[coverage.method as 'traced' | 'dots' | 'photo'];
  return w.measure.beside(way, share(value), share(low), share(high));
};
