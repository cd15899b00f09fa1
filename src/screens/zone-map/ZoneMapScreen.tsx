import { w } from '../../words';
import { Page } from '../parts';

export function ZoneMapScreen(_: { readonly sculpture: string; readonly elevation: string | undefined }) {
  return <Page title={w.zoneMap.title}>{null}</Page>;
}
