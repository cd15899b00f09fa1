import { useState } from 'react';
import { addSentinel, editSentinel, removeSentinel, type ShotList } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Choice, Field, Notice, Sheet, SheetActs } from '../parts';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk, useTyped } from '../shell';

const words = w.stations.squares;

interface SquareSheetProps {
  readonly list: ShotList;
  /** Undefined: a new one. */
  readonly sentinel: Thing<'sentinel'> | undefined;
  readonly onClose: () => void;
}

/** One sentinel square: where it lies, and how the frame is laid on again. */
export function SquareSheet({ list, sentinel, onClose }: SquareSheetProps) {
  const desk = useDesk();
  const [which, setWhich] = useState<'best' | 'worst' | undefined>(sentinel?.body.which);
  const [zone, setZone] = useState(
    sentinel?.body.zone ?? (list.zonesToday.length === 1 ? (list.zonesToday[0]?.thing ?? '') : ''),
  );
  const [find, setFind] = useState(sentinel?.body.find ?? '');
  const [since, setSince] = useState(sentinel?.body.since ?? desk.today());
  const [note, setNote] = useState(sentinel?.body.note ?? '');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['square', sentinel?.thing, list.sculpture.thing], {
    which: [which, setWhich],
    zone: [zone, setZone],
    find: [find, setFind],
    since: [since, setSince],
    note: [note, setNote],
  });
  const { run, refused, busy } = useDeed(typed);
  const done = (text: string) => () => {
    say(text);
    onClose();
  };
  const save = () => {
    setTried(true);
    if (!which || !zone || !find.trim() || !since) return;
    const fields = { find, since, note: note.trim() || undefined };
    return sentinel
      ? run(() => editSentinel(desk, sentinel.thing, fields), done(words.saved))
      : run(() => addSentinel(desk, list.sculpture.thing, { ...fields, which, zone }), done(words.saved));
  };
  const nameOf = (thing: string) => {
    const found = [...list.zonesToday, ...list.zones].find((z) => z.thing === thing);
    return found ? w.sculptures.zone.edit(found.body.letter, found.body.name) : '';
  };
  const twice = !sentinel && which && list.sentinels.some(({ body }) => body.which === which);
  return (
    <Sheet
      open
      title={sentinel ? words.edit(sentinel.body.which) : words.add}
      onClose={onClose}
      actions={
        <SheetActs
          save={words.keep}
          onSave={save}
          remove={
            sentinel && {
              word: words.remove,
              go: () => void run(() => removeSentinel(desk, sentinel.thing), done(words.removed)),
            }
          }
          busy={busy}
        />
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      {sentinel ? (
        <div>
          <p className="strong">{nameOf(zone)}</p>
          <p className="soft">{words.fixed}</p>
        </div>
      ) : (
        <>
          <Choice
            label={words.which}
            options={(['best', 'worst'] as const).map((value) => ({
              value,
              label: words.whichWords[value],
              detail: words.whichDetails[value],
            }))}
            value={which}
            onChange={setWhich}
            error={tried && !which ? words.whichMissing : undefined}
          />
          {twice && which && <Notice title={words.another(which)} />}
          <Select
            label={words.zone}
            value={zone}
            onChange={setZone}
            options={[
              { value: '', label: w.stations.form.notSaid },
              ...list.zonesToday.map(({ thing }) => ({ value: thing, label: nameOf(thing) })),
            ]}
          />
          {tried && !zone && <p className="field-error">{words.zoneMissing}</p>}
        </>
      )}
      <Field
        label={words.find}
        hint={words.findHint}
        kind="long"
        value={find}
        onChange={setFind}
        maxLength={1000}
        error={tried && !find.trim() ? words.findMissing : undefined}
      />
      <Field
        label={words.since}
        kind="date"
        value={since}
        onChange={setSince}
        short
        error={tried && !since ? words.sinceWrong : undefined}
      />
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </Sheet>
  );
}
