import { useEffect, useRef } from 'react';
import { type AskedAgain, rateAgain, skipAskingAgain, type Undoable } from '../../actions';
import { kindOf } from '../../engine/trade';
import { w } from '../../words';
import { Button, Notice } from '../parts';
import { CoverageLadder } from '../parts/CoverageLadder';
import { useDeed, useDesk } from '../shell';
import { usePadKeys } from './padKeys';
import { UndoButton } from './UndoButton';

const words = w.round.end;

interface AskAgainProps {
  readonly round: string;
  readonly asked: AskedAgain;
  readonly undo: Undoable | undefined;
}

/** One coverage judged once more, without its first value: how steady is this eye? */
export function AskAgain({ round, asked, undo }: AskAgainProps) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  usePadKeys();
  const { letter, name } = asked.zone.body;
  const origin = asked.origin === 'metal' ? '' : `, ${w.round.said.origin[asked.origin]}`;
  const heading = useRef<HTMLHeadingElement>(null);
  const question = `${letter} ${asked.kind} ${asked.done}`;
  const before = useRef(question);
  useEffect(() => {
    // The first comes up with the screen, whose title has the focus; of each later one its own title is read out.
    if (before.current !== question) heading.current?.focus({ preventScroll: true });
    before.current = question;
  }, [question]);
  const label = `${w.round.ask.extentArea(asked.kind, letter)}${origin}`;
  return (
    <section className="again" aria-label={words.againTitle(letter, name)}>
      <h2 ref={heading} tabIndex={-1}>
        {words.againTitle(letter, name)}
      </h2>
      <p className="soft">{words.againWhat}</p>
      <p className="pad-group-label">
        {label} <span className="soft">({words.againProgress(asked.done + 1, asked.all)})</span>
      </p>
      {kindOf(asked.kind)?.looksLike && <p className="soft">{kindOf(asked.kind)?.looksLike}</p>}
      <CoverageLadder
        label={label}
        onStep={({ value, low, high }) =>
          void run(() => rateAgain(desk, round, { value, low, high, method: 'ladder' }))
        }
      />
      <div className="row by-hand">
        <Button size="round" onClick={() => void run(() => skipAskingAgain(desk, round))}>
          {words.againSkip}
        </Button>
        <UndoButton round={round} undo={undo} />
      </div>
      {refused && <Notice kind="problem" title={refused} />}
    </section>
  );
}
