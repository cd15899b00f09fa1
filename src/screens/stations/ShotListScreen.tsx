import { w } from '../../words';
import { Page } from '../parts';

export function ShotListScreen(_: { readonly sculpture: string }) {
  return <Page title={w.stations.title}>{null}</Page>;
}
