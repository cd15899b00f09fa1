import { Page } from '../parts';

export function HoldsScreen() {
  return <Page title="Holds">{null}</Page>;
}
