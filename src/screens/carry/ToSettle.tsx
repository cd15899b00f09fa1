import { roundsThatMayBeOne, unsettled } from '../../actions';
import { w } from '../../words';
import { LinkButton, Notice } from '../parts';
import { pathTo, useDesk, useQuestion } from '../shell';

const words = w.carry;

/** What two people said apart and nobody has settled; nothing is shown where there is none. */
export function ToSettle() {
  const desk = useDesk();
  const things = useQuestion(unsettled(desk))?.length ?? 0;
  const pairs = useQuestion(roundsThatMayBeOne(desk))?.length ?? 0;
  if (things + pairs === 0) return null;
  return (
    <Notice
      kind="caution"
      title={words.toSettle}
      actions={<LinkButton to={pathTo.settle()}>{words.goSettle}</LinkButton>}
    >
      {things > 0 && <p>{words.toSettleSome(things)}</p>}
      {pairs > 0 && <p>{words.toSettleRounds(pairs)}</p>}
    </Notice>
  );
}
