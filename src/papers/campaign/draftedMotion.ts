import { causesFirst } from '../../engine/campaign';
import { zonesAt } from '../../engine/record';
import { date, money, share, w } from '../../words';
import type { CampaignOnPaper } from './campaignOnPaper';
import { fundOf } from './fundOfCampaign';
import { unitsText, type Ways, waitingWith } from './waysSideBySide';

const words = w.paperBoard;

/** The motion as the record gives it: the way the campaign follows, its price, and what must be there first. */
export const draftedMotion = (file: CampaignOnPaper, ways: Ways): string => {
  const { campaign, planned, rules, record, today, name } = file;
  const option = ways.chosen ?? ways.leaning?.option;
  if (!option) return words.motionNoWay(name);
  const once = waitingWith(file, ways, option);
  const upkeep = fundOf(file)?.body.upkeep;
  const decision = planned.decision.find(({ thing }) => thing === campaign.body.decision)?.body;
  const care = ways.options.find(({ body }) => body.sort === 'keep waxing' && body !== option.body);
  const review = decision?.review;
  return words.motionDrafted({
    work: name,
    title: option.body.title,
    price: once ? unitsText(once.now, once.currency) : '',
    contingency: share(rules.contingency),
    upkeep: upkeep ? money(upkeep) : '',
    causes: causesFirst(zonesAt(record, today), planned.cause, today).open.length > 0,
    care: care?.body.title ?? '',
    review: review && review > today ? date(review) : '',
  });
};
