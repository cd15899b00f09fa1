/** How corrosive the air of the place is, as the standards tell it of clean coupons. It says nothing of a waxed work. */
export { attackOver, type Beyond, depositionClass, exponentsOf, multiplier } from './attack';
export { type Air, type CorrosionRate, categoryOf, corrosionRates, firstYearRate, flagsOf } from './corrosion';
export {
  type Category,
  categoryRows,
  categorySource,
  depositionClasses,
  depositionSource,
  inputRanges,
  inputRangesSource,
  type Metal,
  type MetalRow,
  metals,
  powerUntil,
  powerUntilSource,
  uncertainty,
  uncertaintySource,
} from './metals';
export { type SiteReason, siteReasons } from './reasonCodes';
