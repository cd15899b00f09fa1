/** What the trade knows, as data with sources. Nothing here computes a score. */
export {
  type BidCriterion,
  bidCriteria,
  bidCriterionOf,
  fewestScorers,
  marksApart,
  mostMark,
  priceCriterion,
  priceFormula,
  weightsSum,
} from './bidCriteria';
export { type CampaignStep, campaignStepOf, campaignSteps } from './campaignSteps';
export { type Cause, causeOf, causes } from './causes';
export { type Caution, type CautionPlace, cautions, cautionsAt } from './cautions';
export { type ClassRow, enClasses, type Level } from './classes';
export { type CloseDownStep, type ClosedFor, closeDownSteps } from './closeDown';
export { type PaperItem, type PaperOf, paperItemOf, paperItems } from './completeness';
export { type LadderStep, ladder, ladderStepOf } from './coverageLadder';
export { type CoverageMethod, coverageMethodOf, coverageMethods } from './coverageMethods';
export { type GlassData, type GlassKind, glassData, glassKindOf, glassKinds } from './glass';
export { type GroundsTopic, groundsTopicOf, groundsTopics } from './grounds';
export { type HeatOfMetal, heatOfMetals, torchPower, torchShare } from './heatOfMetals';
export { type HeightRule, heightRules, weatherFloat, workingReachStanding } from './heights';
export {
  type ExposureLimit,
  exposureLimits,
  type HotCheck,
  type HotWorkRule,
  hotChecks,
  hotDayDefaults,
  hotWorkRule,
  hotWorkRules,
  patinationHeats,
} from './hotWork';
export { type IncidentSort, incidentSortOf, incidentSorts } from './incidents';
export { alarmRules, beddings } from './insertHeat';
export { type KeptThing, keptThingOf, keptThings } from './keptThings';
export type { ActiveArea, ExclusiveLayer, Group, KindOfFinding, Measure } from './kindOfFinding';
export { kindOf, kinds } from './kinds';
export { type Method, methodOf, methods } from './methods';
export { type NamesOfTrade, named, namedUnder, speakTrade } from './named';
export { type OptionSort, optionSortOf, optionSorts } from './options';
export { type PackedFor, type PackingItem, packingItems } from './packing';
export { expiresSoonDays, type SortOfProduct, sortOfProduct, sortsOfProduct, unitSizes } from './products';
export { roundTypes } from './roundTypes';
export { type RustGrade, rustGradeOf, rustGrades, rustPictures } from './rustGrades';
export { defaultScale, type Scale, scaleOf, stainKey } from './scale';
export type { Source } from './source';
export { stopRules } from './stopRules';
export { type Treatment, treatmentOf, treatments } from './treatments';
export { yearVerdicts } from './verdicts';
export { type WeatherRule, weatherRules } from './weatherRules';
export {
  activities,
  activityOf,
  countOf,
  counts,
  originOf,
  origins,
  severities,
  severityOf,
  type Weighted,
} from './weights';
export { settles, type WorkEffect, workEffectOf, workEffects } from './workEffects';
export {
  areaTolerance,
  fewestPrices,
  outlierFactor,
  seasonDays,
  type WorkItem,
  workItemOf,
  workItems,
} from './workItems';
export {
  beadings,
  type Exposure,
  exposures,
  type Reach,
  reaches,
  reasonsNotLooked,
  type Substrate,
  sides,
  substrates,
} from './zoneSetting';
