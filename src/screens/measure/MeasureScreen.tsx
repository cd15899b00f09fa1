import { w } from '../../words';
import { Page } from '../parts';

export function MeasureScreen(_: { readonly photo: string; readonly about: string }) {
  return <Page title={w.measure.title}>{null}</Page>;
}
