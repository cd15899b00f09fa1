import { lastDeed, undoLast } from '../../actions';
import { deedNamed, w } from '../../words';
import { Button, LinkButton, Notice, UndoIcon } from '../parts';
import { pathTo, say, useDeed, useDesk, useQuestion } from '../shell';

const words = w.photos.viewfinder;

interface TakenNoticeProps {
  readonly what: string;
  readonly sculpture: string;
  readonly undone: () => void;
}

/** The photo is kept: take it back, or go on. */
export function TakenNotice({ what, sculpture, undone }: TakenNoticeProps) {
  const desk = useDesk();
  const last = useQuestion(lastDeed(desk));
  const { run, refused } = useDeed();
  const undoes = last?.name.code === 'deed: photo kept' ? deedNamed(last.name) : undefined;
  const undo = (deed: string) =>
    void run(
      () => undoLast(desk),
      () => {
        say(w.shell.undone(deed));
        undone();
      },
    );
  return (
    <Notice
      title={words.keptWhat(what)}
      actions={
        <>
          {undoes && (
            <Button size="round" icon={<UndoIcon />} aria-label={w.shell.undoOf(undoes)} onClick={() => undo(undoes)}>
              {w.shell.undo}
            </Button>
          )}
          <LinkButton to={pathTo.shots(sculpture)} size="round">
            {words.on}
          </LinkButton>
        </>
      }
    >
      {refused && <p>{refused}</p>}
    </Notice>
  );
}
