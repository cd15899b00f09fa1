import { Page } from '../parts';

export function WalkScreen() {
  return <Page title="Walk">{null}</Page>;
}
