import { type Desk, type Outcome, setPlanned } from '../../actions';
import { ofCampaign, type QuantityLine } from '../../engine/campaign';
import { nameOf, type Thing } from '../../engine/record';
import type { OpenFile } from './OfCampaign';

/** The schedule of a campaign: there is one, so that two tablets write the same. */
export const scheduleOf = (file: OpenFile): Thing<'quantities'> | undefined => ofCampaign(file, 'quantities')[0];

/** Says the schedule anew with these lines, as of today. */
export const keepLines = (desk: Desk, file: OpenFile, items: readonly QuantityLine[]): Promise<Outcome> => {
  const { campaign, today } = file;
  const there = scheduleOf(file);
  return setPlanned(desk, 'quantities', there?.thing ?? nameOf.quantities(campaign.thing), {
    ...there?.body,
    sculpture: campaign.body.sculpture,
    campaign: campaign.thing,
    date: today,
    items: [...items],
  });
};
