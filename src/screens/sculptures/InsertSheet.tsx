import { useState } from 'react';
import { addInsert, editInsert, removeInsert } from '../../actions';
import type { BodyOf, SculptureRecord, Thing } from '../../engine/record';
import { typedNumber, w } from '../../words';
import { Choice, Field, Notice, Sheet, SheetActs } from '../parts';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk } from '../shell';

const words = w.sculptures.insert;
type Removable = BodyOf<'insert'>['removable'];
const removables: readonly Removable[] = ['yes', 'no', 'not known'];

interface InsertSheetProps {
  readonly record: SculptureRecord;
  /** Undefined: a new one. */
  readonly insert: Thing<'insert'> | undefined;
  readonly onClose: () => void;
}

export function InsertSheet({ record, insert, onClose }: InsertSheetProps) {
  const desk = useDesk();
  const [material, setMaterial] = useState(insert?.body.material ?? '');
  const [count, setCount] = useState(String(insert?.body.count ?? 1));
  const [removable, setRemovable] = useState<Removable>(insert?.body.removable ?? 'not known');
  const [zone, setZone] = useState(insert?.body.zone ?? '');
  const [note, setNote] = useState(insert?.body.note ?? '');
  const [tried, setTried] = useState(false);
  const { run, refused, busy } = useDeed();
  const counted = typedNumber(count);
  const countRight = counted !== undefined && Number.isInteger(counted) && counted >= 1;
  const done = (text: string) => () => {
    say(text);
    onClose();
  };
  const save = () => {
    setTried(true);
    if (!material.trim() || !countRight) return;
    const fields = { material, count: counted, removable, zone: zone || undefined, note: note.trim() || undefined };
    return insert
      ? run(() => editInsert(desk, insert.thing, fields), done(words.saved))
      : run(() => addInsert(desk, record.sculpture.thing, fields), done(words.saved));
  };
  const zoneOptions = [
    { value: '', label: words.zoneNone },
    ...record.zones.map(({ thing, body }) => ({ value: thing, label: w.sculptures.zone.edit(body.letter, body.name) })),
  ];
  return (
    <Sheet
      open
      title={insert ? words.edit : words.add}
      onClose={onClose}
      actions={
        <SheetActs
          save={words.save}
          onSave={save}
          remove={
            insert && {
              word: words.remove,
              go: () => void run(() => removeInsert(desk, insert.thing), done(words.removed)),
            }
          }
          busy={busy}
        />
      }
    >
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.material}
        value={material}
        onChange={setMaterial}
        maxLength={200}
        error={tried && !material.trim() ? words.materialMissing : undefined}
      />
      <Field
        label={words.count}
        kind="number"
        value={count}
        onChange={setCount}
        short
        error={tried && !countRight ? words.countWrong : undefined}
      />
      <Choice
        label={words.removable}
        options={removables.map((value) => ({ value, label: words.removableWords[value] }))}
        value={removable}
        onChange={setRemovable}
      />
      {record.zones.length > 0 && <Select label={words.zone} value={zone} onChange={setZone} options={zoneOptions} />}
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </Sheet>
  );
}
