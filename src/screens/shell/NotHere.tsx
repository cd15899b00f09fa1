import { w } from '../../words';
import { EmptyState, LinkButton } from '../parts';
import { pathTo } from './paths';

/** The address speaks of a thing this device does not have. */
export function NotHere({ title = w.sculptures.work.notHere }: { readonly title?: string }) {
  return (
    <EmptyState
      page
      title={title}
      actions={
        <LinkButton to={pathTo.sculptures()} kind="main">
          {w.sculptures.work.back}
        </LinkButton>
      }
    >
      <p>{w.sculptures.work.notHereWhat}</p>
    </EmptyState>
  );
}
