import { useState } from 'react';
import type { QuantityLine } from '../../engine/campaign';
import { reaches, workItemOf, workItems } from '../../engine/trade';
import { numberTyped, typedNumber, w } from '../../words';
import { Choice, Field, Notice, Sheet, SheetActs } from '../parts';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk, useTyped } from '../shell';
import type { OpenFile } from './OfCampaign';
import { keepLines } from './scheduleOf';

const words = w.campaign.quantities;
const units = ['m2', 'piece', 'sum', 'day'] as const;
const own = '';

interface LineSheetProps {
  readonly file: OpenFile;
  readonly lines: readonly QuantityLine[];
  /** Undefined: a new one. */
  readonly line: QuantityLine | undefined;
  readonly onClose: () => void;
}

const written = (value: number | undefined): string => (value === undefined ? '' : numberTyped(value));
const nextId = (lines: readonly QuantityLine[]): string => {
  const numbers = lines.map(({ id }) => Number(/^i(\d+)$/.exec(id)?.[1] ?? 0));
  return `i${1 + Math.max(0, ...numbers)}`;
};

/** A field that holds `undefined` is a field that is not there. */
const withoutEmpty = (line: QuantityLine): QuantityLine =>
  Object.fromEntries(Object.entries(line).filter(([, value]) => value !== undefined)) as QuantityLine;

/** One line of the schedule: where, what, how much, between what bounds. */
export function LineSheet({ file, lines, line, onClose }: LineSheetProps) {
  const desk = useDesk();
  const [name, setName] = useState(line?.name ?? '');
  const [task, setTask] = useState(line ? (workItemOf(line.task) ? line.task : own) : (workItems[0]?.id ?? own));
  const [ownTask, setOwnTask] = useState(line && !workItemOf(line.task) ? line.task : '');
  const [unit, setUnit] = useState<QuantityLine['unit']>(line?.unit ?? 'm2');
  const [amount, setAmount] = useState(written(line?.amount));
  const [low, setLow] = useState(written(line?.low));
  const [high, setHigh] = useState(written(line?.high));
  const [reach, setReach] = useState(line?.reach ?? '');
  const [condition, setCondition] = useState(line?.condition ?? '');
  const [note, setNote] = useState(line?.note ?? '');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['line of the schedule', line?.id, file.campaign.thing], {
    name: [name, setName],
    task: [task, setTask],
    ownTask: [ownTask, setOwnTask],
    unit: [unit, setUnit],
    amount: [amount, setAmount],
    low: [low, setLow],
    high: [high, setHigh],
    reach: [reach, setReach],
    condition: [condition, setCondition],
    note: [note, setNote],
  });
  const { run, refused, busy } = useDeed(typed);
  const [much, least, most] = [amount, low, high].map(typedNumber);
  const amountWrong = much === undefined || much <= 0;
  const rangeWrong =
    (low.trim() !== '' && (least === undefined || (much !== undefined && least > much))) ||
    (high.trim() !== '' && (most === undefined || (much !== undefined && most < much)));
  const said = task === own ? ownTask.trim() : task;
  const keep = (items: readonly QuantityLine[], text: string) =>
    run(
      () => keepLines(desk, file, items),
      () => {
        say(text);
        onClose();
      },
    );
  const save = () => {
    setTried(true);
    if (!name.trim() || !said || amountWrong || rangeWrong) return;
    const body = withoutEmpty({
      ...line,
      id: line?.id ?? nextId(lines),
      name: name.trim(),
      task: said,
      unit,
      amount: much,
      low: least,
      high: most,
      reach: reach || undefined,
      condition: condition.trim() || undefined,
      note: note.trim() || undefined,
    });
    return keep(line ? lines.map((one) => (one.id === line.id ? body : one)) : [...lines, body], words.saved);
  };
  return (
    <Sheet
      open
      title={line ? words.edit(line.name) : words.add}
      onClose={onClose}
      actions={
        <SheetActs
          save={words.save}
          onSave={save}
          remove={
            line && {
              word: words.remove,
              go: () =>
                void keep(
                  lines.filter(({ id }) => id !== line.id),
                  words.removed,
                ),
            }
          }
          busy={busy}
        />
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.name}
        value={name}
        onChange={setName}
        maxLength={300}
        error={tried && !name.trim() ? words.nameMissing : undefined}
      />
      <Select
        label={words.task}
        value={task}
        onChange={(value) => {
          setTask(value);
          setUnit(workItemOf(value)?.unit ?? unit);
        }}
        options={[
          ...workItems.map(({ id, name }) => ({ value: id, label: name })),
          { value: own, label: words.ownTask },
        ]}
      />
      {task === own && (
        <Field
          label={words.ownTask}
          value={ownTask}
          onChange={setOwnTask}
          maxLength={200}
          error={tried && !ownTask.trim() ? words.nameMissing : undefined}
        />
      )}
      <Choice
        label={words.unit}
        tiles="narrow"
        options={units.map((value) => ({ value, label: words.units[value] }))}
        value={unit}
        onChange={setUnit}
      />
      <div className="fields">
        <Field
          label={words.amount}
          kind="number"
          value={amount}
          onChange={setAmount}
          maxLength={12}
          short
          error={tried && amountWrong ? words.amountMissing : undefined}
        />
        <Field label={words.low} kind="number" value={low} onChange={setLow} maxLength={12} short optional />
        <Field
          label={words.high}
          kind="number"
          value={high}
          onChange={setHigh}
          maxLength={12}
          short
          optional
          error={tried && rangeWrong ? words.rangeWrong : undefined}
        />
      </div>
      <Select
        label={words.columns.reach}
        value={reach}
        onChange={setReach}
        options={[
          { value: '', label: w.parts.notKnown },
          ...reaches.map(({ id, name }) => ({ value: id, label: name })),
        ]}
      />
      <Field label={words.condition} kind="long" value={condition} onChange={setCondition} maxLength={1000} optional />
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </Sheet>
  );
}
