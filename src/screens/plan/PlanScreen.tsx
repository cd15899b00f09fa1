import { w } from '../../words';
import { Page } from '../parts';

export function PlanScreen() {
  return <Page title={w.plan.title}>{null}</Page>;
}
