import { useState } from 'react';
import { goOnWorkingOut, stopWorkingOut, type WorkingOut, workingOut } from '../../actions';
import { w } from '../../words';
import { Button } from '../parts';
import { useDesk } from './DeskContext';
import { useQuestion } from './useQuestion';
import './underWay.css';

const words = w.nextSteps;

/** What is being worked out beside the page: how far it is, and a way to leave off. Nothing where nothing was; where something was its room stays, so that nothing under it moves. */
export function UnderWay({ what }: { readonly what: WorkingOut['what'] }) {
  const desk = useDesk();
  const at = useQuestion(workingOut(desk));
  const now = at?.what === what ? at : undefined;
  const [last, setLast] = useState(now);
  if (now && now !== last) setLast(now);
  if (!last) return null;
  return <Told at={last} what={what} over={!now} />;
}

interface ToldProps {
  readonly at: WorkingOut;
  readonly what: WorkingOut['what'];
  readonly over: boolean;
}

function Told({ at, what, over }: ToldProps) {
  const desk = useDesk();
  if (at.state === 'left off') {
    return (
      <div className="row not-printed" aria-hidden={over || undefined} data-over={over || undefined}>
        <p className="grow">{words.leftOff[what]}</p>
        <Button onClick={() => goOnWorkingOut(desk)}>{words.goOn}</Button>
      </div>
    );
  }
  const known = at.all > 0;
  return (
    <div
      className="row not-printed under-way"
      role="status"
      aria-hidden={over || undefined}
      data-over={over || undefined}
    >
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
