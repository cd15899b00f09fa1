import { w } from '../../words';
import { Page } from '../parts';

export function YearScreen(_: { readonly year?: string | undefined }) {
  return <Page title={w.year.title}>{null}</Page>;
}
