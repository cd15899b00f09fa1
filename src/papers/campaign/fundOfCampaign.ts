import { type FundFigures, fundFiguresOf, giftsOf, isFundFigures } from '../../engine/fund';
import type { Thing } from '../../engine/record';
import { thingsOfAll } from '../reading';
import type { CampaignOnPaper } from './campaignOnPaper';

/** The fund that pays for a campaign, where it names one. */
export const fundOf = ({ planned, campaign }: CampaignOnPaper): Thing<'fund'> | undefined =>
  planned.fund.find(({ thing }) => thing === campaign.body.fund);

/** Its figures; undefined where there is no fund, or its amounts are of two currencies. */
export const fundFigures = (file: CampaignOnPaper): FundFigures | undefined => {
  const fund = fundOf(file);
  const told =
    fund && fundFiguresOf(fund, giftsOf(thingsOfAll(file.source, 'gift'), fund.thing), file.rules, file.today);
  return told && isFundFigures(told) ? told : undefined;
};
