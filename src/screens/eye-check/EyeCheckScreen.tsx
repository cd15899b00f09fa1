import { Page } from '../parts';

export function EyeCheckScreen() {
  return <Page title="EyeCheck">{null}</Page>;
}
