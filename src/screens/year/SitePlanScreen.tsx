import { w } from '../../words';
import { Page } from '../parts';

export function SitePlanScreen() {
  return <Page title={w.year.title}>{null}</Page>;
}
