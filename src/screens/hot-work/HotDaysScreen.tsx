import { w } from '../../words';
import { Page } from '../parts';

export function HotDaysScreen(_: { readonly campaign: string }) {
  return <Page title={w.hotWork.title}>{null}</Page>;
}
