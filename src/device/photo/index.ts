/** A picture from a camera or a file, as it is kept. */

export { type PictureType, pictureType } from './pictureType';
export { type PhotoRead, readPhoto } from './readPhoto';
