import { w } from '../../words';
import { Page } from '../parts';

export function FundsScreen() {
  return <Page title={w.funds.title}>{null}</Page>;
}
