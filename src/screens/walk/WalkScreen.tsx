import { Page } from '../parts';

export function WalkScreen() {
  return <Page title="Walk"></Page>;
}
