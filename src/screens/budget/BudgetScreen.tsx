import { w } from '../../words';
import { Page } from '../parts';

export function BudgetScreen() {
  return <Page title={w.budget.title}>{null}</Page>;
}
