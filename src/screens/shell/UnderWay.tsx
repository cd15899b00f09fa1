import { goOnWorkingOut, stopWorkingOut, type WorkingOut, workingOut } from '../../actions';
import { w } from '../../words';
import { Button } from '../parts';
import { useDesk } from './DeskContext';
import { useQuestion } from './useQuestion';
import './underWay.css';

const words = w.nextSteps;

/** What is being worked out beside the page: how far it is, and a way to leave off. Nothing where nothing is. */
export function UnderWay({ what }: { readonly what: WorkingOut['what'] }) {
  const desk = useDesk();
  const at = useQuestion(workingOut(desk));
  if (at?.what !== what) return null;
  if (at.state === 'left off') {
    return (
      <div className="row not-printed">
        <p className="grow">{words.leftOff[what]}</p>
        <Button onClick={() => goOnWorkingOut(desk)}>{words.goOn}</Button>
      </div>
    );
  }
  const known = at.all > 0;
  return (
    <div className="row not-printed under-way" role="status">
      <div className="grow stack tight">
        <p>
          {words.underWay[what]} {known && <span className="figures">{words.step[what](at.done, at.all)}</span>}
        </p>
        <progress aria-label={words.underWay[what]} {...(known ? { value: at.done, max: at.all } : {})} />
      </div>
      <Button onClick={() => stopWorkingOut(desk)}>{words.leaveOff}</Button>
    </div>
  );
}
