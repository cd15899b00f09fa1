import { w } from '../../words';
import { EmptyState, LinkButton } from '../parts';
import { pathTo } from '../shell';

/** The round was taken back, or this tablet never had it. */
export function RoundMissing() {
  const words = w.round.walk;
  return (
    <EmptyState
      page
      title={words.missing}
      actions={
        <LinkButton to={pathTo.sculptures()} kind="main">
          {words.toSculptures}
        </LinkButton>
      }
    >
      <p>{words.missingWhat}</p>
    </EmptyState>
  );
}
