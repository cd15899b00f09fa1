import { useState } from 'react';
import { isOut } from '../../engine/heat';
import type { BodyOf, Thing } from '../../engine/record';
import { hotDayDefaults } from '../../engine/trade';
import { measureTyped, typedMeasure, typedNumber, w } from '../../words';
import { Choices, Field } from '../parts';
import { useDesk, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';
import type { Around } from './AroundWork';
import { insertName } from './insertNames';

const words = w.hotWork.card;

interface HotDaySheetProps {
  readonly around: Around;
  readonly campaign: string | undefined;
  /** Undefined: a new card. */
  readonly day: Thing<'hotDay'> | undefined;
  readonly onClose: () => void;
  readonly onRemoved?: () => void;
}

/** What stands on the card before the day. A new one begins on the strict side of the published rules, with all inserts on it. */
export function HotDaySheet({ around, campaign, day, onClose, onRemoved }: HotDaySheetProps) {
  const { record, planned } = around;
  const desk = useDesk();
  const [text, setText] = useState(() => newText(day?.body, around, desk.today()));
  const [tried, setTried] = useState(false);
  const typed = useTyped(['hot day', day?.thing, campaign], { text: [text, setText] });
  const set =
    <K extends keyof typeof text>(key: K) =>
    (value: (typeof text)[K]) =>
      setText({ ...text, [key]: value });
  const clearZone = typedMeasure('length', text.clearZone);
  const watch = typedNumber(text.watch);
  const zoneWrong = clearZone === undefined || clearZone > 1000;
  const watchWrong = watch === undefined || watch > 1440 || !Number.isInteger(watch);
  const body = (): BodyOf<'hotDay'> | undefined => {
    setTried(true);
    if (!text.date || zoneWrong || watchWrong) return;
    const watcher = personOf(text.watcherRole, text.watcherName);
    return {
      ...{ sculpture: record.sculpture.thing, campaign, checked: [] },
      ...{ date: text.date, permit: text.permit.trim(), clearZone, watchMinutes: watch },
      authorisedBy: personOf(text.byRole, text.byName) ?? { role: '' },
      ...{ watcher, inserts: [...text.inserts], note: text.note.trim() || undefined },
    };
  };
  const careOf = (insert: string) => planned.insertCare.find(({ body }) => body.insert === insert)?.body;
  return (
    <PlannedSheet
      kind="hotDay"
      thing={day?.thing}
      title={day ? w.hotWork.edit : w.hotWork.add}
      words={{ ...words, saved: w.hotWork.kept, removed: w.hotWork.removed }}
      body={body}
      fixed={['sculpture', 'campaign', 'checked']}
      typed={typed}
      onClose={onClose}
      onRemoved={onRemoved}
    >
      <Field
        label={words.date}
        kind="date"
        value={text.date}
        onChange={set('date')}
        error={tried && !text.date ? words.dateMissing : undefined}
        short
      />
      <Field
        label={words.permit}
        hint={words.permitHint}
        value={text.permit}
        onChange={set('permit')}
        maxLength={200}
        optional
      />
      <PersonFields
        who={words.authorised}
        role={text.byRole}
        name={text.byName}
        onRole={set('byRole')}
        onName={set('byName')}
      />
      <PersonFields
        who={words.watcher}
        role={text.watcherRole}
        name={text.watcherName}
        onRole={set('watcherRole')}
        onName={set('watcherName')}
      />
      <Field
        label={words.clearZone}
        hint={words.clearZoneHint}
        takes="length"
        value={text.clearZone}
        onChange={set('clearZone')}
        error={tried && zoneWrong ? words.figureWrong : undefined}
        short
      />
      <Field
        label={words.watch}
        hint={words.watchHint}
        kind="number"
        unit="min"
        value={text.watch}
        onChange={set('watch')}
        error={tried && watchWrong ? words.figureWrong : undefined}
        short
      />
      {record.inserts.length === 0 ? (
        <p className="soft">{words.noInserts}</p>
      ) : (
        <Choices
          label={words.inserts}
          hint={words.insertsHint}
          tiles="full"
          options={record.inserts.map((insert) => ({
            value: insert.thing,
            label: insertName(record, insert),
            detail: isOut(careOf(insert.thing), text.date) ? w.hotWork.readings.out : undefined,
          }))}
          values={text.inserts}
          onChange={set('inserts')}
        />
      )}
      <Field label={words.note} kind="long" value={text.note} onChange={set('note')} maxLength={4000} optional />
    </PlannedSheet>
  );
}

const newText = (body: BodyOf<'hotDay'> | undefined, { record, planned }: Around, today: string) => {
  const careOf = (insert: string) => planned.insertCare.find((care) => care.body.insert === insert)?.body;
  const here = record.inserts.map(({ thing }) => thing).filter((insert) => !isOut(careOf(insert), today));
  return {
    date: body?.date ?? today,
    permit: body?.permit ?? '',
    byRole: body?.authorisedBy.role ?? '',
    byName: body?.authorisedBy.name ?? '',
    watcherRole: body?.watcher?.role ?? '',
    watcherName: body?.watcher?.name ?? '',
    clearZone: measureTyped('length', body?.clearZone ?? hotDayDefaults.clearZone),
    watch: String(body?.watchMinutes ?? hotDayDefaults.watchMinutes),
    inserts: (body ? (body.inserts ?? []) : here) as readonly string[],
    note: body?.note ?? '',
  };
};

const personOf = (role: string, name: string) => {
  const said = { role: role.trim(), name: name.trim() };
  if (!said.role && !said.name) return undefined;
  // A name without a role is its own role: nothing that was typed is dropped.
  return said.name && said.role ? said : { role: said.role || said.name };
};

interface PersonFieldsProps {
  readonly who: string;
  readonly role: string;
  readonly name: string;
  readonly onRole: (role: string) => void;
  readonly onName: (name: string) => void;
}

function PersonFields({ who, role, name, onRole, onName }: PersonFieldsProps) {
  return (
    <div className="hot-pair">
      <Field label={words.role(who)} value={role} onChange={onRole} maxLength={100} optional />
      <Field label={words.name(who)} value={name} onChange={onName} maxLength={200} optional />
    </div>
  );
}
