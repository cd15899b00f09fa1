import { w } from '../../words';
import { Page } from '../parts';

export function DecisionsScreen(_: { readonly sculpture?: string | undefined }) {
  return <Page title={w.decisions.title}>{null}</Page>;
}
