import { w } from '../../words';
import { Page } from '../parts';

export function BidsScreen(_: { readonly campaign: string }) {
  return <Page title={w.campaign.title}>{null}</Page>;
}
