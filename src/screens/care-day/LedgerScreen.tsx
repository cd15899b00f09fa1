import { w } from '../../words';
import { Page } from '../parts';

export function LedgerScreen(_: { readonly sculpture: string }) {
  return <Page title={w.careDay.title}>{null}</Page>;
}
