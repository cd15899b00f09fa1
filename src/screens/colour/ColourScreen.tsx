import { w } from '../../words';
import { Page } from '../parts';

export function ColourScreen(_: { readonly sculpture: string }) {
  return <Page title={w.colour.title}>{null}</Page>;
}
