import type { BagAnswer } from './asked';
import { checkedBag } from './checkedBag';

/** Beside the page: reads a bag through. */
export const checking: BagAnswer<'check'> = ({ file }, way) => checkedBag(file, way);
