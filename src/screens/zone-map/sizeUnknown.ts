import type { Size } from '../../engine/photo';

/** Where the size of a picture is not known its drawing keeps this shape: most are upright. */
export const sizeUnknown: Size = { width: 3, height: 4 };
