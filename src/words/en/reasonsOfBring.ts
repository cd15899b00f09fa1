import type { BringReason } from '../../engine/bring';
import type { Sentences } from './sentence';

/** Why a list or a file brought in is not taken as it stands. */
export const reasonsOfBring = {
  'bring: empty list': () => 'There is no row in this list.',
} satisfies Sentences<BringReason>;
