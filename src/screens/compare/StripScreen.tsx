import { w } from '../../words';
import { Page } from '../parts';

export function StripScreen(_: { readonly sculpture: string; readonly station: string }) {
  return <Page title={w.compare.title}>{null}</Page>;
}
