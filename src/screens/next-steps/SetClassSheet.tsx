import { useState } from 'react';
import { clearClass, setClass } from '../../actions';
import type { Classes } from '../../engine/condition';
import { enClasses } from '../../engine/trade';
import { sayReason, w } from '../../words';
import { Button, Choice, Field, Notice, Sheet } from '../parts';
import { say, useDesk, useTyped } from '../shell';
import { type Family, families, levelWritten } from './ClassesShown';

const words = w.nextSteps;
const asProposed = 'as proposed';

interface SetClassSheetProps {
  readonly round: string;
  readonly classes: Classes;
  /** What the classes are of, in words. */
  readonly about: string;
  readonly onClose: () => void;
}

/** A named person sets or overrules a class; what is left as proposed stays with the rule. */
export function SetClassSheet({ round, classes, about, onClose }: SetClassSheetProps) {
  const desk = useDesk();
  const start = (family: Family) => (classes.set?.[family] === undefined ? asProposed : String(classes.set[family]));
  const [levels, setLevels] = useState<Readonly<Record<Family, string>>>({
    condition: start('condition'),
    urgency: start('urgency'),
    recommendation: start('recommendation'),
  });
  const [setBy, setSetBy] = useState(classes.set?.setBy ?? '');
  const [note, setNote] = useState(classes.set?.note ?? '');
  const [tried, setTried] = useState(false);
  const [fault, setFault] = useState('');
  const typed = useTyped(['classes set', undefined, round, classes.about], {
    levels: [levels, setLevels],
    setBy: [setBy, setSetBy],
    note: [note, setNote],
  });
  const level = (family: Family) => (levels[family] === asProposed ? undefined : Number(levels[family]));
  const nothing = families.every((family) => level(family) === undefined);

  const store = async () => {
    setTried(true);
    if (!nothing && setBy.trim() === '') return;
    if (nothing && !classes.set) return;
    const outcome = nothing
      ? await clearClass(desk, round, classes.about)
      : await setClass(desk, round, classes.about, {
          condition: level('condition'),
          urgency: level('urgency'),
          recommendation: level('recommendation'),
          setBy,
          note: note.trim() === '' ? undefined : note.trim(),
        });
    if (!outcome.ok) {
      setFault(sayReason(outcome.reason));
      return;
    }
    typed.kept();
    say(nothing ? words.cleared : words.setDone);
    onClose();
  };

  const options = (family: Family) => {
    const proposed = classes[family].level;
    return [
      {
        value: asProposed,
        label: words.asProposed(proposed === null ? words.classNone : levelWritten(family, proposed)),
      },
      ...enClasses[family].map((row) => ({ value: String(row.level), label: words.level(row.id, row.name) })),
    ];
  };

  return (
    <Sheet
      open
      title={words.setTitle}
      onClose={onClose}
      actions={
        <>
          <Button onClick={onClose}>{words.cancel}</Button>
          <Button kind="main" onClick={store}>
            {words.setDo}
          </Button>
        </>
      }
    >
      {typed.line}
      <p className="strong">{about}</p>
      <p>{words.setWhat}</p>
      {families.map((family) => (
        <Choice
          key={family}
          label={words.className[family]}
          hint={family === 'recommendation' ? words.rc3Note : undefined}
          value={levels[family]}
          onChange={(value) => setLevels({ ...levels, [family]: value })}
          options={options(family)}
        />
      ))}
      <Field
        label={words.setName}
        value={setBy}
        onChange={setSetBy}
        maxLength={200}
        error={tried && !nothing && setBy.trim() === '' ? words.setNameMissing : undefined}
      />
      <Field label={words.setNote} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
      {tried && nothing && !classes.set && <Notice kind="problem" title={words.setNothing} />}
      {fault && <Notice kind="problem" title={fault} />}
    </Sheet>
  );
}
