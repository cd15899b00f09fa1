/** The look between rounds: is the green back in the watched zones? */
export { type ZoneToLook, zonesToLook } from './lookView';
export { patrolWalk, type WorkPassed, type ZonePassed } from './patrolWalk';
export {
  expectLookPhoto,
  type LookSaid,
  lookPhotoExpected,
  noLookPhoto,
  photoForLook,
  recordAllClear,
  recordLook,
} from './recordLook';
export {
  daysToNextWalk,
  type HoldSaid,
  type WalkList,
  type WhyOnList,
  type WorkOnList,
  walkList,
  type ZoneOnList,
} from './walkList';
export { keepWalkSetting, type WalkSetting, walkSettingKept } from './walkSetting';
