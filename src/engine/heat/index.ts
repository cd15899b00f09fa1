/** Bounds of heat near inserts, limits and temperature logs, the day of hot work, ladders. Nothing here says how near is without danger. */
export {
  arrivalOfHeat,
  type Bound,
  diffusivity,
  glassBound,
  glassDifference,
  type HeatUp,
  heatUpTime,
  reachOfHeat,
  shareAtReach,
} from './bounds';
export {
  afterTick,
  beginWatch,
  minutesOfOwn,
  type OwnWatch,
  ownWatchRefused,
  type Tick,
  type WatchCount,
  type WatchState,
  watchState,
} from './fireWatch';
export { againstClosing, againstStarting, type HotDayFacts, isOut, minutesKept, seenAfter } from './hotDay';
export { daysWithWeather, ladderAngle, ladderFoot, ladderTo, workingReach } from './ladders';
export { layersOf, nextOrder, sameAsBefore, sameIn } from './layers';
export { because as heatReason, type HeatReason, heatReasons } from './reasonCodes';
export { hotDayRefused, insertCareRefused, layerRefused, signedRefused } from './refused';
export {
  alarmAt,
  endOfWork,
  type HeatLevel,
  type HeatLimits,
  type HeatReading,
  type LoggedReading,
  minuteOf,
  type TemperatureLog,
  temperatureLog,
} from './temperatureLog';
