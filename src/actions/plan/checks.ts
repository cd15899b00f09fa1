import {
  approvalRefused,
  bidRefused,
  campaignRefused,
  causeRefused,
  colourCardRefused,
  completenessRefused,
  quantitiesRefused,
} from '../../engine/campaign';
import { methodSheetAgainst, productAgainst } from '../../engine/care';
import { insertCareRefused, layerRefused, signedRefused } from '../../engine/heat';
import { amountRefused } from '../../engine/money';
import type { BodyOf, PlannedKind, Reason } from '../../engine/record';
import { decisionRefused, dueAnswerRefused, taskRefused, tripwireAnswerRefused } from '../../engine/watch';
import { weatherAgainst } from '../../engine/weather';
import {
  agreementRefused,
  incidentRefused,
  moveRefused,
  sitePlanRefused,
  yearPlanRefused,
  yearVerdictRefused,
} from '../../engine/year';
import type { Desk } from '../desk';
import { bidCriteriaAgainst, bidScoreAgainst } from './bidScoreAgainst';
import { fundCheck, giftCheck } from './fundChecks';
import { dayOpenAgainst, hotDayAgainst } from './hotDayAgainst';
import { moneyRulesCheck, optionCheck, quoteCheck } from './moneyChecks';

/** What stands against a body before it is kept, or nothing. It may read what else is kept. */
export type PlannedCheck<K extends PlannedKind> = (
  body: BodyOf<K>,
  desk: Desk,
  thing: string,
) => Reason | undefined | Promise<Reason | undefined>;

/** What each kind must hold beyond its schema. A kind not here is held by its schema alone. */
export const plannedChecks: { readonly [K in PlannedKind]?: PlannedCheck<K> } = {
  methodSheet: methodSheetAgainst,
  product: (body, desk) => productAgainst(body, desk.today()),
  weather: (body, desk) => weatherAgainst(body, desk.today()),
  incident: incidentRefused,
  move: moveRefused,
  groundsAgreement: agreementRefused,
  yearPlan: yearPlanRefused,
  sitePlan: sitePlanRefused,
  yearVerdict: yearVerdictRefused,
  option: optionCheck,
  quote: quoteCheck,
  moneyRules: moneyRulesCheck,
  fund: fundCheck,
  gift: giftCheck,
  decision: (body, _, thing) => decisionRefused(body, thing),
  tripwireAnswer: tripwireAnswerRefused,
  dueAnswered: dueAnswerRefused,
  task: taskRefused,
  layer: layerRefused,
  accessSheet: ({ dayCost }) => dayCost && amountRefused(dayCost),
  hotDay: hotDayAgainst,
  insertCare: insertCareRefused,
  insertReading: (body, desk) => signedRefused(body) ?? dayOpenAgainst(body, desk),
  insertAfter: (body, desk) => signedRefused(body) ?? dayOpenAgainst(body, desk),
  campaign: campaignRefused,
  cause: causeRefused,
  quantities: quantitiesRefused,
  bid: bidRefused,
  bidCriteria: bidCriteriaAgainst,
  bidScore: bidScoreAgainst,
  completeness: completenessRefused,
  approval: approvalRefused,
  colourCard: colourCardRefused,
};
