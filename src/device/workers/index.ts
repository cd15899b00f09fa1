/** What is worked out beside the page, and how it is kept. Light: the sums themselves come when they are needed. */
export type { Job } from './asked';
export type { FiguresAsked, Step } from './figures';
export {
  contentStamp,
  everythingWord,
  firstStamp,
  holds,
  type Kept,
  type KeptSummary,
  rowOf,
  type Standing,
  stampOf,
  type Words,
} from './kept';
export type { FirmnessAsked } from './redraws';
export { lookedKey } from './through';
export { shares, type Work, workOut } from './workOut';
