import { w } from '../../words';
import { Page } from '../parts';

export function ApprovalsScreen(_: { readonly campaign: string }) {
  return <Page title={w.campaign.title}>{null}</Page>;
}
