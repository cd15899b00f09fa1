import { useState } from 'react';
import { addPlanned, type DueThings, editPlanned, removePlanned } from '../../actions';
import type { BodyOf, Thing } from '../../engine/record';
import { w, workName } from '../../words';
import { Button, Field, Notice, Sheet, SheetActs } from '../parts';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk, useTyped } from '../shell';

const words = w.due.task;

interface TaskSheetProps {
  /** Undefined: a new one. */
  readonly task: Thing<'task'> | undefined;
  readonly works: DueThings['works'];
  readonly onClose: () => void;
}

/** A task said by hand: what, on which work, from when, how often; and that it is done. */
export function TaskSheet({ task, works, onClose }: TaskSheetProps) {
  const desk = useDesk();
  const [what, setWhat] = useState(task?.body.what ?? '');
  const [work, setWork] = useState(task?.body.sculpture ?? '');
  const [from, setFrom] = useState(task?.body.from ?? desk.today());
  const [until, setUntil] = useState(task?.body.until ?? '');
  const [every, setEvery] = useState(task?.body.every === undefined ? '' : String(task.body.every));
  const [note, setNote] = useState(task?.body.note ?? '');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['task', task?.thing], {
    what: [what, setWhat],
    work: [work, setWork],
    from: [from, setFrom],
    until: [until, setUntil],
    every: [every, setEvery],
    note: [note, setNote],
  });
  const { run, refused, busy } = useDeed(typed);
  const everyWrong = every.trim() !== '' && !/^([1-9]\d?|[1-5]\d\d|600)$/.test(every.trim());
  const done = (said: string) => () => {
    say(said);
    onClose();
  };
  const save = () => {
    setTried(true);
    if (!what.trim() || !from || everyWrong) return;
    const body: BodyOf<'task'> = {
      sculpture: work || undefined,
      // A zone of another work is none of this one.
      zone: work === task?.body.sculpture ? task?.body.zone : undefined,
      what: what.trim(),
      from,
      until: until || undefined,
      every: every.trim() ? Number(every.trim()) : undefined,
      note: note.trim() || undefined,
    };
    return task
      ? run(() => editPlanned(desk, 'task', task.thing, body), done(words.saved))
      : run(() => addPlanned(desk, 'task', body), done(words.saved));
  };
  return (
    <Sheet
      open
      title={task ? words.edit : words.add}
      onClose={onClose}
      actions={
        <>
          {task && (
            <Button
              kind="main"
              disabled={busy}
              onClick={() =>
                run(() => editPlanned(desk, 'task', task.thing, { done: { on: desk.today() } }), done(words.doneSaid))
              }
            >
              {words.done}
            </Button>
          )}
          <SheetActs
            save={words.save}
            onSave={save}
            remove={
              task && {
                word: words.remove,
                go: () => void run(() => removePlanned(desk, 'task', task.thing), done(words.removed)),
              }
            }
            busy={busy}
          />
        </>
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.what}
        value={what}
        onChange={setWhat}
        maxLength={500}
        error={tried && !what.trim() ? words.whatMissing : undefined}
      />
      {works.length > 0 && (
        <Select
          label={words.work}
          value={work}
          onChange={setWork}
          options={[
            { value: '', label: words.noWork },
            ...works.map(({ thing, body }) => ({ value: thing, label: workName({ body }) })),
          ]}
        />
      )}
      <Field
        label={words.from}
        kind="date"
        value={from}
        onChange={setFrom}
        short
        error={tried && !from ? words.fromMissing : undefined}
      />
      <Field label={words.until} kind="date" value={until} onChange={setUntil} short optional />
      <Field
        label={words.every}
        kind="number"
        value={every}
        onChange={setEvery}
        unit={words.everyUnit}
        short
        optional
        error={tried && everyWrong ? words.everyWrong : undefined}
      />
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </Sheet>
  );
}
