import { w } from '../../words';
import { EmptyState, LinkButton } from '../parts';
import { pathTo } from '../shell';

/** The work of this address was removed, or never came to this device. */
export function NotHereYet() {
  return (
    <EmptyState
      page
      title={w.round.walk.missing}
      actions={<LinkButton to={pathTo.sculptures()}>{w.round.walk.toSculptures}</LinkButton>}
    />
  );
}
