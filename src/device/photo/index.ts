/** A picture from a camera or a file, as it is kept. */
export { type PhotoRead, readPhoto } from './readPhoto';
export { type PictureType, pictureType } from './pictureType';
