import { Link } from 'wouter';
import { lastDeed, settings, surveyors, tabs, undoLast } from '../../actions';
import { deedNamed, sayReason, w } from '../../words';
import { Button, QuestionIcon, UndoIcon } from '../parts';
import { useDesk } from './DeskContext';
import { pathTo } from './paths';
import { say } from './say';
import { useQuestion } from './useQuestion';
import { useUndoKey } from './useUndoKey';

interface HeaderProps {
  readonly field: boolean;
  /** Name of the page of help of this screen. */
  readonly help: string | undefined;
}

/** Where we are, who is at work, Undo, which names what it would take back, and help. On the ladder without Undo: the pad has its own. */
export function Header({ field, help }: HeaderProps) {
  return (
    <header className="header by-hand not-printed">
      <Link href={pathTo.sculptures()} className="mark">
        <Mark />
        <span className="mark-name">{w.product}</span>
      </Link>
      <AtWork />
      {!field && <Undo />}
      <Link href={pathTo.help(help)} className="help-link" aria-label={w.shell.help}>
        <QuestionIcon />
      </Link>
    </header>
  );
}

function AtWork() {
  const desk = useDesk();
  const { surveyor } = useQuestion(settings);
  const people = useQuestion(surveyors(desk));
  if (!people || people.length === 0) return null;
  const role = people.find(({ thing }) => thing === surveyor)?.role;
  return (
    <Link href={pathTo.settings()} className="who">
      <span>{role ? w.shell.surveyor(role) : w.shell.nobody}</span>
    </Link>
  );
}

function Undo() {
  const desk = useDesk();
  const last = useQuestion(lastDeed(desk));
  const { mode } = useQuestion(tabs(desk));
  // The garden itself came in by a deed; that one is taken back by removing the demo.
  const can = last && mode === 'writing' && !(desk.invented && last.isImport);
  const undo = async () => {
    const outcome = await undoLast(desk);
    say(outcome.ok ? w.shell.undone(deedNamed(outcome.name)) : sayReason(outcome.reason));
  };
  useUndoKey(can ? () => void undo() : undefined);
  if (!can) return null;
  return (
    <Button icon={<UndoIcon />} aria-label={w.shell.undoOf(deedNamed(last.name))} onClick={undo}>
      <span className="undo-deed">{w.shell.undoOf(deedNamed(last.name))}</span>
      <span className="undo-short">{w.shell.undo}</span>
    </Button>
  );
}

/** The walk round a work, not quite closed. */
function Mark() {
  return (
    <svg width="32" height="32" viewBox="0 0 32 32" aria-hidden="true">
      <path className="mark-ring" d="M16 4a12 12 0 11-9.2 4.3" />
      <circle className="mark-dot" cx="16" cy="16" r="4.5" />
    </svg>
  );
}
