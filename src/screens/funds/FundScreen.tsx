import { w } from '../../words';
import { Page } from '../parts';

export function FundScreen(_: { readonly fund: string }) {
  return <Page title={w.funds.title}>{null}</Page>;
}
