/** Money in hand, pledged and hoped, and what it comes to over time. */
export { fundRefused, giftRefused } from './checks';
export { type Course, courseOf, type Level, levels, type Month } from './course';
export { type Cover, coverOf, type Overfull } from './cover';
export {
  courseFrom,
  type FundFigures,
  fundFiguresOf,
  giftsOf,
  isFundFigures,
  savingsOf,
} from './figures';
export { chanceOf, type Fund, type Gift, type GiftState, type Pipeline, pipelineOf } from './pipeline';
export { type FundReason, fundReasons } from './reasonCodes';
export { type Saving, savingFor } from './saving';
export { endowmentFor, linesOn, targetOf, targetOn, withReserve, yearsBetween } from './target';
