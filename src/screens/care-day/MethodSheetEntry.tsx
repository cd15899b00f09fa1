import { useState } from 'react';
import { setPlanned } from '../../actions';
import { methodsOn } from '../../engine/care';
import { nameOf, type Thing } from '../../engine/record';
import { methods } from '../../engine/trade';
import { w } from '../../words';
import { Choices, Field, Notice, Sheet, SheetActs } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';

const words = w.careDay.methods;
const options = methods.map(({ id, name }) => ({ value: id, label: name }));

interface MethodSheetEntryProps {
  readonly sculpture: string;
  readonly sheet: Thing<'methodSheet'> | undefined;
  readonly onClose: () => void;
}

/** A method is allowed, forbidden or not spoken of; turned on in one list it leaves the other. */
export function MethodSheetEntry({ sculpture, sheet, onClose }: MethodSheetEntryProps) {
  const desk = useDesk();
  const was = methodsOn(sheet);
  const [lists, setLists] = useState<{ readonly allowed: readonly string[]; readonly forbidden: readonly string[] }>(
    was,
  );
  const [also, setAlso] = useState(was.alsoForbidden.join('\n'));
  const [setBy, setSetBy] = useState(sheet?.body.setBy ?? '');
  const typed = useTyped(['method sheet', sheet?.thing, sculpture], {
    lists: [lists, setLists],
    also: [also, setAlso],
    setBy: [setBy, setSetBy],
  });
  const { run, refused, busy } = useDeed(typed);
  const without = (from: readonly string[], taken: readonly string[]) => from.filter((id) => !taken.includes(id));
  const known = (list: readonly string[]) => list.filter((id) => methods.some((method) => method.id === id));
  /** Codes of a later version stay as they are. */
  const unknown = (list: readonly string[]) => without(list, known(list));
  const save = () => {
    const lines = also.split('\n').flatMap((line) => line.trim().slice(0, 300) || []);
    const by = setBy.trim();
    const body = {
      ...sheet?.body,
      sculpture,
      allowed: [...lists.allowed],
      forbidden: [...lists.forbidden],
      alsoForbidden: lines.length > 0 ? lines : undefined,
      setBy: by || undefined,
      date: desk.today(),
    };
    return run(
      () => setPlanned(desk, 'methodSheet', nameOf.methodSheet(sculpture), body),
      () => {
        say(words.kept);
        onClose();
      },
    );
  };
  return (
    <Sheet
      open
      title={words.changeTitle}
      onClose={onClose}
      actions={<SheetActs save={words.keep} onSave={save} busy={busy} />}
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Choices
        label={words.forbidden}
        options={options}
        values={known(lists.forbidden)}
        onChange={(forbidden) =>
          setLists({
            forbidden: [...forbidden, ...unknown(lists.forbidden)],
            allowed: without(lists.allowed, forbidden),
          })
        }
      />
      <Field label={words.also} kind="long" value={also} onChange={setAlso} maxLength={4000} optional />
      <Choices
        label={words.allowed}
        options={options}
        values={known(lists.allowed)}
        onChange={(allowed) =>
          setLists({ allowed: [...allowed, ...unknown(lists.allowed)], forbidden: without(lists.forbidden, allowed) })
        }
      />
      <Field label={words.setBy} hint={words.setByHint} value={setBy} onChange={setSetBy} maxLength={200} optional />
    </Sheet>
  );
}
