import { useState } from 'react';
import { setPlanned } from '../../actions';
import { type BodyOf, nameOf } from '../../engine/record';
import type { DueStanding } from '../../engine/watch';
import { type NameOfThing, w } from '../../words';
import { Choice, Field, Notice, Sheet, SheetActs } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { dueSentences, dueTitle } from './dueText';

const words = w.due.sheet;
type Answer = BodyOf<'dueAnswered'>['answer'];
const answers: readonly Answer[] = ['done', 'not needed', 'later'];
/** These the record answers by itself, and better. */
const seenByRecord = new Set(['look', 'round', 'watch', 'warranty', 'wax']);

/** And what they ask for comes back with what is seen next. */
const comesBack = new Set(['look', 'round', 'wax']);

interface AnswerDueSheetProps {
  readonly due: DueStanding;
  readonly names: NameOfThing;
  readonly onClose: () => void;
}

/** Done, not needed, or later: what is said to something that is due. */
export function AnswerDueSheet({ due, names, onClose }: AnswerDueSheetProps) {
  const desk = useDesk();
  const [answer, setAnswer] = useState<Answer>();
  const [until, setUntil] = useState('');
  const [note, setNote] = useState('');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['due answered', undefined, due.key], {
    answer: [answer, setAnswer],
    until: [until, setUntil],
    note: [note, setNote],
  });
  const { run, refused, busy } = useDeed(typed);
  const untilMissing = answer === 'later' && until <= desk.today();
  const save = () => {
    setTried(true);
    if (!answer || untilMissing) return;
    const body: BodyOf<'dueAnswered'> = {
      sculpture: due.sculpture ?? undefined,
      key: due.key,
      on: desk.today(),
      answer,
      until: answer === 'later' ? until : undefined,
      note: note.trim() || undefined,
    };
    return run(
      () => setPlanned(desk, 'dueAnswered', nameOf.dueAnswered(due.key), body),
      () => {
        say(words.saved);
        onClose();
      },
    );
  };
  return (
    <Sheet
      open
      title={words.title}
      onClose={onClose}
      actions={<SheetActs save={words.save} onSave={save} busy={busy} />}
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <p className="strong">{[dueTitle(due), due.sculpture && names(due.sculpture)].filter(Boolean).join(' · ')}</p>
      <p>{dueSentences(due, names).join(' ')}</p>
      {seenByRecord.has(due.sort) && <p className="soft">{words.recordBetter}</p>}
      <Choice
        label={words.what}
        tiles="full"
        options={answers.map((value) => ({
          value,
          label: w.due.answers[value],
          detail: value === 'not needed' && comesBack.has(due.sort) ? words.seenAgain : words.details[value],
        }))}
        value={answer}
        onChange={setAnswer}
        error={tried && !answer ? words.whatMissing : undefined}
      />
      {answer === 'later' && (
        <Field
          label={words.until}
          kind="date"
          value={until}
          onChange={setUntil}
          short
          error={tried && untilMissing ? words.untilMissing : undefined}
        />
      )}
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </Sheet>
  );
}
