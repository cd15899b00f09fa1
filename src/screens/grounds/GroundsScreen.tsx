import { w } from '../../words';
import { Page } from '../parts';

export function GroundsScreen() {
  return <Page title={w.grounds.title}>{null}</Page>;
}
