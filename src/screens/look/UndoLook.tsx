import { lastDeed, undoLast } from '../../actions';
import { deedNamed, w } from '../../words';
import { Button, UndoIcon } from '../parts';
import { say, useDeed, useDesk, useQuestion, useUndoKey } from '../shell';

const deedsOfLook = ['deed: looked', 'deed: looked, all clear', 'deed: photo added to a look'];

/** One touch takes back the last answer, or the photo added to it. */
export function UndoLook() {
  const desk = useDesk();
  const last = useQuestion(lastDeed(desk));
  const { run } = useDeed();
  const can = last && deedsOfLook.includes(last.name.code) ? last : undefined;
  const what = can ? deedNamed(can.name) : '';
  const act = () =>
    void run(
      () => undoLast(desk),
      () => say(w.shell.undone(what)),
    );
  useUndoKey(can && act);
  if (!can) return null;
  return (
    <Button size="round" icon={<UndoIcon />} aria-label={w.shell.undoOf(what)} onClick={act}>
      {w.shell.undo}
    </Button>
  );
}
