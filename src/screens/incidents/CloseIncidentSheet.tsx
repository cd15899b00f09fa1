import { useState } from 'react';
import { editPlanned } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Button, Field, Notice, Sheet } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';

const words = w.incidents;

interface CloseIncidentSheetProps {
  readonly incident: Thing<'incident'>;
  /** Something that could hurt someone still stands at the work. */
  readonly checkOpen: boolean;
  readonly onClose: () => void;
}

export function CloseIncidentSheet({ incident, checkOpen, onClose }: CloseIncidentSheetProps) {
  const desk = useDesk();
  const [on, setOn] = useState(desk.today());
  const [note, setNote] = useState('');
  const typed = useTyped(['incident closed', undefined, incident.thing], { on: [on, setOn], note: [note, setNote] });
  const { run, refused, busy } = useDeed(typed);
  const close = () =>
    run(
      () =>
        editPlanned(desk, 'incident', incident.thing, {
          closed: { on: on || desk.today(), ...(note.trim() ? { note: note.trim() } : {}) },
        }),
      () => {
        say(words.closedSaid);
        onClose();
      },
    );
  return (
    <Sheet
      open
      title={words.closeTitle}
      onClose={onClose}
      actions={
        <Button kind="main" disabled={busy} onClick={close}>
          {words.closeDo}
        </Button>
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      {checkOpen && <Notice kind="stop" title={words.checkStillOpen} />}
      <p className="strong">{incident.body.what}</p>
      <p>{words.closeWhat}</p>
      <Field label={words.closeDay} kind="date" value={on} onChange={setOn} short />
      <Field label={words.closeNote} kind="long" value={note} onChange={setNote} maxLength={2000} optional />
    </Sheet>
  );
}
