import { w } from '../../words';
import { Page } from '../parts';

export function CompareScreen(_: {
  readonly sculpture: string;
  readonly one: string | undefined;
  readonly other: string | undefined;
}) {
  return <Page title={w.compare.title}>{null}</Page>;
}
