import { useState } from 'react';
import { closePersonCheck, type OpenPersonCheck } from '../../actions';
import { sayReason, w } from '../../words';
import { Button, Field, Notice, Sheet } from '../parts';
import { say, useDesk, useTyped } from '../shell';

const words = w.nextSteps;

/** A person check is closed by a named person, on a day, with what was done. */
export function CloseCheckSheet({ check, onClose }: { readonly check: OpenPersonCheck; readonly onClose: () => void }) {
  const desk = useDesk();
  const [by, setBy] = useState('');
  const [on, setOn] = useState(desk.today());
  const [note, setNote] = useState('');
  const [missing, setMissing] = useState(false);
  const [fault, setFault] = useState('');
  const typed = useTyped(['check closed', undefined, check.thing], {
    by: [by, setBy],
    on: [on, setOn],
    note: [note, setNote],
  });
  const close = async () => {
    if (by.trim() === '') {
      setMissing(true);
      return;
    }
    const outcome = await closePersonCheck(desk, check.thing, { by, on, note });
    if (!outcome.ok) {
      setFault(sayReason(outcome.reason));
      return;
    }
    typed.kept();
    say(words.closed);
    onClose();
  };
  return (
    <Sheet
      open
      title={words.closeTitle}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>{words.cancel}</Button>
          <Button kind="main" onClick={close}>
            {words.closeDo}
          </Button>
        </>
      }
    >
      {typed.line}
      <p className="strong">{check.body.what}</p>
      <p>{words.closeWhat}</p>
      <Field
        label={words.closeBy}
        value={by}
        onChange={setBy}
        maxLength={200}
        error={missing && by.trim() === '' ? words.closeByMissing : undefined}
      />
      <Field label={words.closeDay} kind="date" value={on} onChange={setOn} short />
      <Field label={words.closeNote} kind="long" value={note} onChange={setNote} maxLength={2000} optional />
      {fault && <Notice kind="problem" title={fault} />}
    </Sheet>
  );
}
