import { recordState } from '../../actions';
import { useDesk } from './DeskContext';
import { useQuestion } from './useQuestion';

/** On a screen that is handed out as a paper is: the foot of its printed pages names the state of the record. */
export function RecordState() {
  const state = useQuestion(recordState(useDesk()));
  return state ? <data hidden className="record-state" value={state} /> : null;
}

/** What such a screen says it is made from; nothing on any other. */
export const recordStateShown = (): string | undefined =>
  document.querySelector<HTMLDataElement>('data.record-state')?.value;
