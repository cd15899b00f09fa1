import type { ColourReason } from '../../engine/colour';
import type { Sentences } from './sentence';

/** Why a figure of a colour is as it is, or why there is none. */
export const reasonsOfColour = {} satisfies Sentences<ColourReason>;
