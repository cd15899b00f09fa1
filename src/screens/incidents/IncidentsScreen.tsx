import { w } from '../../words';
import { Page } from '../parts';

export function IncidentsScreen() {
  return <Page title={w.incidents.title}>{null}</Page>;
}
