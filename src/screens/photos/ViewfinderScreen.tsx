import { w } from '../../words';
import { Page } from '../parts';

export function ViewfinderScreen(_: { readonly sculpture: string; readonly station: string }) {
  return <Page title={w.photos.title}>{null}</Page>;
}
