import { w } from '../../words';
import { Page } from '../parts';

export function InsertsScreen(_: { readonly sculpture: string }) {
  return <Page title={w.hotWork.title}>{null}</Page>;
}
