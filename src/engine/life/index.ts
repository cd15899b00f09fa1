/** How long something lasts when it is only looked at now and then: intervals, their distribution, and what may be said of it. */
export { type CommonShape, commonShape } from './commonShape';
export { gettingShorter, provenChance, provenFrom, type Shortening, signOf } from './gettingShorter';
export { hasEnd, type Interval, isExact } from './interval';
export { type LifeReason, lifeReasons } from './reasonCodes';
export { type Redraw, type RedrawOptions, redraws } from './redraws';
export { type SurvivalStep, stepsOf, survivalAt } from './survival';
export { type Mass, type Turnbull, turnbull } from './turnbull';
export { type Limited, profileDrop, returnTime, type Weibull, type WeibullFit, weibull } from './weibull';
