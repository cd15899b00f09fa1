import { useState } from 'react';
import { closePersonCheck } from '../../actions';
import { w } from '../../words';
import { Button, Field, Notice, Sheet } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';

const words = w.sculptures.check;

/** The button, and the sheet in which a named person says that it is safe. */
export function CloseCheck({ check }: { readonly check: string }) {
  const desk = useDesk();
  const [open, setOpen] = useState(false);
  const [by, setBy] = useState('');
  const [on, setOn] = useState(desk.today());
  const [note, setNote] = useState('');
  const [missing, setMissing] = useState(false);
  const typed = useTyped(['check closed', undefined, check], {
    by: [by, setBy],
    on: [on, setOn],
    note: [note, setNote],
  });
  const { run, refused, busy } = useDeed(typed);
  const close = () => {
    if (by.trim() === '') return setMissing(true);
    return run(
      () => closePersonCheck(desk, check, { by, on, note }),
      () => {
        setOpen(false);
        say(words.closed);
      },
    );
  };
  return (
    <>
      <Button onClick={() => setOpen(true)}>{words.close}</Button>
      <Sheet
        open={open}
        title={words.closeTitle}
        onClose={() => setOpen(false)}
        actions={
          <>
            <Button onClick={() => setOpen(false)}>{w.sculptures.zone.cancel}</Button>
            <Button kind="main" onClick={close} disabled={busy}>
              {words.closeDo}
            </Button>
          </>
        }
      >
        <p>{words.closeWhat}</p>
        {typed.line}
        {refused && <Notice kind="problem" title={refused} />}
        <Field
          label={words.by}
          value={by}
          onChange={setBy}
          error={missing && !by.trim() ? words.byMissing : undefined}
        />
        <Field label={words.on} kind="date" value={on} onChange={setOn} short />
        <Field label={words.note} kind="long" value={note} onChange={setNote} optional />
      </Sheet>
    </>
  );
}
