/** The look between rounds: is the green back in the watched zones? */
export { type ZoneToLook, zonesToLook } from './lookView';
export {
  expectLookPhoto,
  type LookSaid,
  lookPhotoExpected,
  noLookPhoto,
  photoForLook,
  recordLook,
} from './recordLook';
