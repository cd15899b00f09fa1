import { recordState } from '../../actions';
import { ArrivalContext } from './arrival';
import { useDesk } from './DeskContext';
import { useQuestion } from './useQuestion';

/** On a screen that is handed out as a paper is: the foot of its printed pages names the state of the record. */
export function RecordState() {
  // Unseen, and read from the whole record: the screen does not wait for it.
  return (
    <ArrivalContext value={null}>
      <State />
    </ArrivalContext>
  );
}

function State() {
  const state = useQuestion(recordState(useDesk()));
  return state ? <data hidden className="record-state" value={state} /> : null;
}

/** What such a screen says it is made from; nothing on any other. */
export const recordStateShown = (): string | undefined =>
  document.querySelector<HTMLDataElement>('data.record-state')?.value;
