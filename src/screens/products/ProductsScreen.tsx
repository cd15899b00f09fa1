import { w } from '../../words';
import { Page } from '../parts';

export function ProductsScreen() {
  return <Page title={w.products.title}>{null}</Page>;
}
