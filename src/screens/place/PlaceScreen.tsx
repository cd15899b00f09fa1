import { Page } from '../parts';

export function PlaceScreen() {
  return <Page title="Place">{null}</Page>;
}
