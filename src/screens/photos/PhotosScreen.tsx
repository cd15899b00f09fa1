import { w } from '../../words';
import { Page } from '../parts';

export function PhotosScreen(_: { readonly sculpture: string }) {
  return <Page title={w.photos.title}>{null}</Page>;
}
