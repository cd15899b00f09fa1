import { w } from '../../words';
import { Page } from '../parts';

export function CloseDownScreen() {
  return <Page title={w.year.title}>{null}</Page>;
}
