import type { PhotoReason } from '../../engine/photo';
import type { Sentences } from './sentence';

/** Why a figure of a photo is as it is, or why there is none. */
export const reasonsOfPhoto = {} satisfies Sentences<PhotoReason>;
