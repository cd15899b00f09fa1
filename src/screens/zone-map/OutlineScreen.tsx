import { w } from '../../words';
import { Page } from '../parts';

export function OutlineScreen(_: { readonly sculpture: string; readonly elevation: string }) {
  return <Page title={w.zoneMap.title}>{null}</Page>;
}
