import { w } from '../../words';
import { Page } from '../parts';

export function HotDayScreen(_: { readonly hotDay: string }) {
  return <Page title={w.hotWork.title}>{null}</Page>;
}
