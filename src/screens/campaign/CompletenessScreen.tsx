import { w } from '../../words';
import { Page } from '../parts';

export function CompletenessScreen(_: { readonly campaign: string; readonly of: string }) {
  return <Page title={w.campaign.title}>{null}</Page>;
}
