import { w } from '../../words';
import { Page } from '../parts';

export function MovesScreen() {
  return <Page title={w.moves.title}>{null}</Page>;
}
