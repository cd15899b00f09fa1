import { w } from '../../words';
import { Page } from '../parts';

export function BriefingScreen() {
  return <Page title={w.year.title}>{null}</Page>;
}
