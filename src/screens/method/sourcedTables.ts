import { thresholds } from '../../engine/change';
import { colourFormulaSource, colourNumbers, noFigureFromPhotos } from '../../engine/colour';
import { areaMethods, constants, solids } from '../../engine/condition';
import { eyeNumbers } from '../../engine/eye';
import { firmnessNumbers } from '../../engine/firmness';
import { holdNumbers, severeExposures } from '../../engine/hold';
import { colourHolds, optionNumbers, priceSpread } from '../../engine/options';
import { coverageNumbers, fitNumbers, obliquities } from '../../engine/photo';
import * as site from '../../engine/site';
import * as trade from '../../engine/trade';
import { trendNumbers } from '../../engine/trend';
import { watchNumbers } from '../../engine/watch';
import { yearNumbers } from '../../engine/year';
import { w } from '../../words';

const words = w.method;

/** Every table of the engine that rests on sources, under what a reader knows it by: a part of this page, or the screen it serves. */
const tables: readonly { readonly use: string; readonly of: readonly unknown[] }[] = [
  { use: words.scaleItself, of: [trade.defaultScale] },
  { use: words.kinds, of: [trade.kinds, trade.stopRules] },
  { use: words.ladder, of: [trade.ladder] },
  { use: words.weights, of: [trade.severities, trade.activities, trade.counts, trade.origins] },
  { use: words.errors, of: [trade.coverageMethods, constants, trade.rustGrades, trade.rustPictures] },
  { use: words.classes, of: [trade.enClasses] },
  { use: words.beading, of: [trade.beadings] },
  { use: words.treatments, of: [trade.treatments] },
  { use: words.verdicts, of: [thresholds] },
  { use: words.areas, of: [areaMethods, solids] },
  { use: w.sculptures.zone.title, of: [trade.exposures, trade.reaches, trade.substrates, trade.sides] },
  { use: w.round.start.title, of: [trade.roundTypes, trade.reasonsNotLooked] },
  { use: w.photoMethod.coverage, of: [coverageNumbers] },
  { use: w.photoMethod.fits, of: [fitNumbers] },
  { use: w.photoMethod.areas, of: [obliquities] },
  { use: w.photoMethod.colour, of: [colourFormulaSource, noFigureFromPhotos, colourNumbers] },
  { use: w.holds.title, of: [holdNumbers, severeExposures] },
  { use: w.overTime.title, of: [trendNumbers] },
  { use: w.nextSteps.title, of: [firmnessNumbers] },
  { use: w.eyeCheck.title, of: [eyeNumbers] },
  { use: w.options.title, of: [trade.optionSorts, optionNumbers, priceSpread, colourHolds] },
  { use: w.due.title, of: [watchNumbers] },
  { use: w.year.title, of: [yearNumbers, trade.yearVerdicts, trade.packingItems, trade.closeDownSteps] },
  { use: w.careDay.title, of: [trade.weatherRules, trade.methods] },
  { use: w.products.title, of: [trade.sortsOfProduct, trade.expiresSoonDays] },
  { use: w.campaign.title, of: [trade.campaignSteps, trade.causes, trade.workEffects, trade.paperItems] },
  {
    use: w.campaign.quantities.title,
    of: [trade.workItems, trade.areaTolerance, trade.outlierFactor, trade.fewestPrices, trade.seasonDays],
  },
  {
    use: w.bidScores.title,
    of: [trade.bidCriteria, trade.priceFormula, trade.mostMark, trade.fewestScorers, trade.marksApart],
  },
  {
    use: w.hotWork.title,
    of: [trade.hotWorkRules, trade.hotChecks, trade.exposureLimits, trade.patinationHeats],
  },
  {
    use: w.insertCare.title,
    of: [
      ...[trade.alarmRules, trade.beddings, trade.glassData, trade.glassKinds],
      ...[trade.heatOfMetals, trade.torchPower, trade.torchShare],
    ],
  },
  { use: w.accessSheet.title, of: [trade.heightRules, trade.weatherFloat, trade.workingReachStanding] },
  { use: w.incidents.title, of: [trade.incidentSorts] },
  { use: w.grounds.title, of: [trade.groundsTopics] },
  { use: w.paperKept.title, of: [trade.keptThings] },
  { use: w.place.title, of: Object.values(site) },
  { use: words.cautions, of: [trade.cautions] },
];

const isSource = (value: object): value is trade.Source => 'sure' in value && 'text' in value;

/** All sources within rows, however they are nested. */
export const sourcesIn = (value: unknown): readonly trade.Source[] => {
  if (typeof value !== 'object' || value === null) return [];
  return isSource(value) ? [value] : Object.values(value).flatMap(sourcesIn);
};

export const sourcesByUse = (): readonly { readonly use: string; readonly sources: readonly trade.Source[] }[] =>
  tables.map(({ use, of }) => ({ use, sources: of.flatMap(sourcesIn) }));
