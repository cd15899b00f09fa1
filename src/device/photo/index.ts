/** A picture from a camera or a file, as it is kept. */

export type { PhotoRead } from './photoRead';
export { type PictureType, pictureType } from './pictureType';
export { readPhoto } from './readPhoto';
