import { w } from '../../words';
import { Page } from '../parts';

export function PackingScreen() {
  return <Page title={w.year.title}>{null}</Page>;
}
