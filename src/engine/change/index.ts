export { clearlyWorseGreen } from './clearlyWorseGreen';
export { comparable, firstComparable, type PreviousComparable, previousComparable } from './comparable';
export { type ChangeReason, changeReasons } from './reasonCodes';
export { type ThenAndNowOptions, thenAndNow } from './thenAndNow';
export { thresholds } from './thresholds';
export type {
  ActiveKind,
  AreaChange,
  Comparable,
  Contribution,
  Done,
  FindingChange,
  IndexChange,
  Judgement,
  Naming,
  Seen,
  SmallestReal,
  ThenAndNow,
  Verdict,
  ZoneChange,
} from './verdict';
