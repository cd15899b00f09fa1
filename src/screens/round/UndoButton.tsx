import { useLocation } from 'wouter';
import { type Undoable, undoInRound } from '../../actions';
import { nameOf } from '../../engine/record';
import { sayReason, w } from '../../words';
import { Button, UndoIcon } from '../parts';
import { pathTo, say, useDesk, useUndoKey } from '../shell';
import { saidUndoable } from './said';

interface UndoButtonProps {
  readonly round: string;
  readonly undo: Undoable | undefined;
  /** The zone on the screen, so that undo only goes elsewhere when it took back something elsewhere. */
  readonly zone?: string;
}

/** Takes back one touch, or the leaving of a zone: then it goes to that zone, open as it was. */
export function UndoButton({ round, undo, zone }: UndoButtonProps) {
  const desk = useDesk();
  const [, go] = useLocation();
  const words = w.round.zone;
  const what = undo ? saidUndoable(undo) : '';
  const act = async () => {
    const outcome = await undoInRound(desk, round);
    if (!outcome.ok) return say(sayReason(outcome.reason));
    say(words.undone(what));
    const to = outcome.zone;
    if (to && to !== zone && to.startsWith(nameOf.zone(''))) go(pathTo.zoneInRound(round, to));
  };
  useUndoKey(undo && (() => void act()));
  if (!undo) return null;
  return (
    <Button size="round" icon={<UndoIcon />} aria-label={words.undoOf(what)} onClick={act}>
      {words.undo}
    </Button>
  );
}
