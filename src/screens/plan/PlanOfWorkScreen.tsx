import { w } from '../../words';
import { Page } from '../parts';

export function PlanOfWorkScreen(_: { readonly sculpture: string }) {
  return <Page title={w.plan.title}>{null}</Page>;
}
