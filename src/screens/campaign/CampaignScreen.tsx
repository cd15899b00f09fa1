import { w } from '../../words';
import { Page } from '../parts';

export function CampaignScreen(_: { readonly campaign: string }) {
  return <Page title={w.campaign.title}>{null}</Page>;
}
