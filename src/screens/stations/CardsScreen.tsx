import { w } from '../../words';
import { Page } from '../parts';

export function CardsScreen(_: { readonly sculpture: string | undefined }) {
  return <Page title={w.stations.title}>{null}</Page>;
}
