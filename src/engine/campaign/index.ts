/** Causes before treatment, quantities from zones, bids beside each other, what a paper must hold, where a campaign stands. */

export { type BidComparison, type ComparedBid, type ComparedLine, compareBids } from './bidComparison';
export { type Criterion, criteriaOf, sameCriteria } from './bidCriteria';
export { bidCriteriaRefused, bidScoreRefused, type KeptOfBids } from './bidScoreRefused';
export { type BidScoring, type Points, type ScoredBid, scoreBids } from './bidScoring';
export { byHand, markOf, type Scorer, type ScoreSheet, type SheetStanding, type Sheets, sheetsOf } from './bidSheets';
export { type CampaignFile, ofCampaign, type PlannedForWork } from './campaignFile';
export { type CausesFirst, causesFirst } from './causesFirst';
export { photosLacking } from './foundAtStep';
export { type CardPhoto, cardPhotos, laterPhoto } from './laterPhoto';
export { type ItemStanding, type ItemState, type PaperStanding, paperEntered, paperStanding } from './paperStanding';
export type { BidLine, PriceOfLine } from './priceOfLine';
export { type CampaignReason, campaignReasons } from './reasonCodes';
export {
  approvalRefused,
  bidRefused,
  campaignRefused,
  causeRefused,
  colourCardRefused,
  completenessRefused,
  quantitiesRefused,
} from './refused';
export { type LineToBe, linesOf, type QuantityLine, type ScheduleAsked, type SeenInZone } from './scheduleOfQuantities';
export { insertsUnprotected, scheduleStanding } from './scheduleStanding';
export { type StepStanding, type StepState, stepAfter, stepsOfCampaign } from './stepsOfCampaign';
export { surfaceOf } from './surfaceOf';
