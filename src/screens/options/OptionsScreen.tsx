import { w } from '../../words';
import { Page } from '../parts';

export function OptionsScreen(_: { readonly sculpture: string }) {
  return <Page title={w.options.title}>{null}</Page>;
}
