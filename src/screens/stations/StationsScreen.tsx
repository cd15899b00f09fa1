import { w } from '../../words';
import { Page } from '../parts';

export function StationsScreen(_: { readonly sculpture: string }) {
  return <Page title={w.stations.title}>{null}</Page>;
}
