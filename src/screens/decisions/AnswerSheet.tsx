import { useState } from 'react';
import { setPlanned } from '../../actions';
import { type BodyOf, nameOf } from '../../engine/record';
import type { TripwireStanding } from '../../engine/watch';
import { type NameOfThing, sayReason, tripwireText, w } from '../../words';
import { Choice, Field, Notice, Sheet, SheetActs } from '../parts';
import { Reasons } from '../parts/Reasons';
import { say, useDeed, useDesk, useTyped } from '../shell';

const words = w.decisions.sheet;
type Answer = BodyOf<'tripwireAnswer'>['answer'];
const answers: readonly Answer[] = ['keep to it', 'look again', 'decide anew'];

interface AnswerSheetProps {
  readonly row: TripwireStanding;
  readonly names: NameOfThing;
  /** `anew`: a new decision is to be written next. */
  readonly onClose: (anew?: boolean) => void;
}

/** A tripwire that went is answered by somebody; what had been seen is kept with the answer. */
export function AnswerSheet({ row, names, onClose }: AnswerSheetProps) {
  const desk = useDesk();
  const [answer, setAnswer] = useState<Answer>();
  const [by, setBy] = useState('');
  const [why, setWhy] = useState('');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['tripwire answered', undefined, row.decision.thing, row.tripwire.id], {
    answer: [answer, setAnswer],
    by: [by, setBy],
    why: [why, setWhy],
  });
  const { run, refused, busy } = useDeed(typed);
  const { decision, tripwire, reasons } = row;
  const save = () => {
    setTried(true);
    if (!answer || !by.trim()) return;
    const seen = reasons.map((reason) => sayReason(reason, names)).join(' ');
    const on = desk.today();
    const body: BodyOf<'tripwireAnswer'> = {
      sculpture: decision.body.sculpture,
      decision: decision.thing,
      tripwire: tripwire.id,
      seen: seen.slice(0, 500),
      on,
      answer,
      why: why.trim() || undefined,
      by: by.trim(),
    };
    return run(
      () => setPlanned(desk, 'tripwireAnswer', nameOf.tripwireAnswer(decision.thing, tripwire.id, on), body),
      () => {
        say(words.saved);
        onClose(answer === 'decide anew');
      },
    );
  };
  return (
    <Sheet
      open
      title={words.title}
      onClose={() => onClose()}
      actions={<SheetActs save={words.save} onSave={save} busy={busy} />}
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <p className="strong">{tripwireText(tripwire, names)}</p>
      <Reasons reasons={reasons} nameOf={names} />
      <Choice
        label={words.what}
        tiles="full"
        options={answers.map((value) => {
          const [label = value, detail] = words.options[value] ?? [];
          return { value, label, detail };
        })}
        value={answer}
        onChange={setAnswer}
        error={tried && !answer ? words.whatMissing : undefined}
      />
      <Field label={words.why} kind="long" value={why} onChange={setWhy} maxLength={2000} optional />
      <Field
        label={words.by}
        hint={words.byHint}
        value={by}
        onChange={setBy}
        maxLength={200}
        error={tried && !by.trim() ? words.byMissing : undefined}
      />
    </Sheet>
  );
}
