import type { BagReason } from '../../engine/bag';
import type { Sentences } from './sentence';

/** Why a bag is not taken. */
export const reasonsOfBag = {
  'bag: not a bag': () => 'This is no bag of a survey.',
} satisfies Sentences<BagReason>;
