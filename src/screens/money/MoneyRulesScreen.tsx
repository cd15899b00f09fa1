import { w } from '../../words';
import { Page } from '../parts';

export function MoneyRulesScreen() {
  return <Page title={w.money.title}>{null}</Page>;
}
