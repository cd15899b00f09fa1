import { w } from '../../words';
import { Page } from '../parts';

export function CampaignsScreen(_: { readonly sculpture: string }) {
  return <Page title={w.campaign.title}>{null}</Page>;
}
