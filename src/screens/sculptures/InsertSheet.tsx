import { useState } from 'react';
import { addInsert, editInsert, removeInsert, thingsOf } from '../../actions';
import { isMoney, readMoney } from '../../engine/money';
import { type BodyOf, nameOf, type SculptureRecord, type Thing } from '../../engine/record';
import { moneyTyped, sayReason, typedNumber, w, zoneOptions } from '../../words';
import { Choice, Field, Notice, Reading, Sheet, SheetActs, Tick } from '../parts';
import { MoneyField } from '../parts/MoneyField';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk, useQuestion, useTyped } from '../shell';
import { useMoney } from '../shell/useMoney';

const words = w.inserts;
type Removable = BodyOf<'insert'>['removable'];
type MaterialBy = NonNullable<BodyOf<'insert'>['materialBy']>;
const materialsBy: readonly MaterialBy[] = ['on record', 'by its looks', 'not known'];
const removables: readonly Removable[] = ['yes', 'no', 'not known'];

interface InsertSheetProps {
  readonly record: SculptureRecord;
  /** Undefined: a new one. */
  readonly insert: Thing<'insert'> | undefined;
  readonly onClose: () => void;
}

export function InsertSheet(props: InsertSheetProps) {
  const desk = useDesk();
  const values = useQuestion(thingsOf(desk, 'insertValue', props.record.sculpture.thing));
  if (!values) return <Reading />;
  const thing = props.insert && nameOf.insertValue(props.insert.thing);
  return <Entry {...props} worth={values.find((value) => value.thing === thing)?.body.value} />;
}

interface EntryProps extends InsertSheetProps {
  readonly worth: BodyOf<'insertValue'>['value'] | undefined;
}

function Entry({ record, insert, worth, onClose }: EntryProps) {
  const desk = useDesk();
  const { currency, onCurrency, keepCurrency } = useMoney();
  const [value, setValue] = useState(worth ? moneyTyped(worth) : '');
  const [material, setMaterial] = useState(insert?.body.material ?? '');
  const [materialBy, setMaterialBy] = useState<MaterialBy | undefined>(insert?.body.materialBy);
  const [maker, setMaker] = useState(insert?.body.maker ?? '');
  const [noMaker, setNoMaker] = useState(insert?.body.makerKnown === false);
  const [where, setWhere] = useState(insert?.body.where ?? '');
  const [count, setCount] = useState(String(insert?.body.count ?? 1));
  const [removable, setRemovable] = useState<Removable>(insert?.body.removable ?? 'not known');
  const [zone, setZone] = useState(insert?.body.zone ?? '');
  const [note, setNote] = useState(insert?.body.note ?? '');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['insert', insert?.thing, record.sculpture.thing], {
    value: [value, setValue],
    material: [material, setMaterial],
    materialBy: [materialBy, setMaterialBy],
    maker: [maker, setMaker],
    noMaker: [noMaker, setNoMaker],
    where: [where, setWhere],
    count: [count, setCount],
    removable: [removable, setRemovable],
    zone: [zone, setZone],
    note: [note, setNote],
  });
  const { run, refused, busy } = useDeed(typed);
  const counted = typedNumber(count);
  const countRight = counted !== undefined && Number.isInteger(counted) && counted >= 1;
  const done = (text: string) => () => {
    say(text);
    onClose();
  };
  const valueIn = worth?.currency ?? currency;
  const read = value.trim() ? readMoney(value, valueIn) : null;
  const valueWrong = read !== null && !isMoney(read) ? sayReason(read) : undefined;
  const save = async () => {
    setTried(true);
    if (!material.trim() || !countRight || (read !== null && !isMoney(read))) return;
    if (read && !worth) {
      let kept = false;
      await run(keepCurrency, () => {
        kept = true;
      });
      if (!kept) return;
    }
    const madeBy = maker.trim() || undefined;
    const fields = {
      ...{ material, materialBy, maker: madeBy, makerKnown: madeBy ? true : noMaker ? false : undefined },
      ...{ count: counted, removable, zone: zone || undefined, where: where.trim() || undefined },
      note: note.trim() || undefined,
    };
    return insert
      ? run(() => editInsert(desk, insert.thing, fields, read), done(words.saved))
      : run(() => addInsert(desk, record.sculpture.thing, fields, read ?? undefined), done(words.saved));
  };
  const zoneChoice = [{ value: '', label: words.zoneNone }, ...zoneOptions(record.zones)];
  return (
    <Sheet
      open
      title={insert ? words.edit : words.add}
      onClose={onClose}
      actions={
        <SheetActs
          save={words.save}
          onSave={() => void save()}
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
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.material}
        value={material}
        onChange={setMaterial}
        maxLength={200}
        error={tried && !material.trim() ? words.materialMissing : undefined}
      />
      <Choice
        label={words.materialBy}
        options={materialsBy.map((value) => ({ value, label: words.materialByWords[value] }))}
        value={materialBy}
        onChange={setMaterialBy}
      />
      <Field label={words.maker} value={maker} onChange={setMaker} maxLength={200} optional />
      {maker.trim() === '' && <Tick label={words.makerNotKnown} checked={noMaker} onChange={setNoMaker} />}
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
      {record.zones.length > 0 && <Select label={words.zone} value={zone} onChange={setZone} options={zoneChoice} />}
      <Field label={words.where} hint={words.whereHint} value={where} onChange={setWhere} maxLength={300} optional />
      <MoneyField
        label={words.value}
        hint={words.valueHint}
        value={value}
        onChange={setValue}
        currency={valueIn}
        onCurrency={worth ? undefined : onCurrency}
        error={tried ? valueWrong : undefined}
        optional
      />
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </Sheet>
  );
}
