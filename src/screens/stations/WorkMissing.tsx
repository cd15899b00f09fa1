import { w } from '../../words';
import { EmptyState, LinkButton } from '../parts';
import { pathTo } from '../shell';

/** The work was taken away, or this tablet never had it. */
export function WorkMissing() {
  return (
    <EmptyState
      page
      title={w.sculptures.work.notHere}
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
