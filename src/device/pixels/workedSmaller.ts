import type { Reason } from '../../engine/record';
import { deviceReason } from '../reasonCodes';
import type { Picture } from './picture';

const millions = ({ width, height }: Picture['size']): number => (width * height) / 1e6;

/** Said where a photo has more pixels than are worked. */
export const workedSmaller = ({ size, whole }: Pick<Picture, 'size' | 'whole'>): readonly Reason[] =>
  millions(whole) > millions(size) * 1.01
    ? [deviceReason('pixels worked smaller', { megapixels: millions(whole), worked: millions(size) })]
    : [];
