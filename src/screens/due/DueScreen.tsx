import { w } from '../../words';
import { Page } from '../parts';

export function DueScreen() {
  return <Page title={w.due.title}>{null}</Page>;
}
