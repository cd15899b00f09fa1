import { useState } from 'react';
import { useLocation } from 'wouter';
import { setUpCollection } from '../../actions';
import { w } from '../../words';
import { Button, Field, Notice, Sheet } from '../parts';
import { pathTo, say, useDeed, useDesk, useTyped } from '../shell';

const words = w.sculptures.welcome;

/** Name of the collection, and who surveys: all that is asked before the first sculpture. */
export function StartYourOwn({ open, onClose }: { readonly open: boolean; readonly onClose: () => void }) {
  const desk = useDesk();
  const [, go] = useLocation();
  const [name, setName] = useState('');
  const [role, setRole] = useState('');
  const [person, setPerson] = useState('');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['beginning', undefined], {
    name: [name, setName],
    role: [role, setRole],
    person: [person, setPerson],
  });
  const { run, refused, busy } = useDeed(typed);
  const begin = () => {
    setTried(true);
    if (!name.trim() || !role.trim()) return;
    return run(
      () => setUpCollection(desk, { name, role, personName: person }),
      () => {
        say(words.begun);
        go(pathTo.newSculpture());
      },
    );
  };
  return (
    <Sheet
      open={open}
      title={words.setUp}
      onClose={onClose}
      actions={
        <Button kind="main" size="big" onClick={begin} disabled={busy}>
          {words.begin}
        </Button>
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.name}
        hint={words.nameHint}
        value={name}
        onChange={setName}
        maxLength={200}
        error={tried && !name.trim() ? words.nameMissing : undefined}
      />
      <Field
        label={words.role}
        hint={words.roleHint}
        value={role}
        onChange={setRole}
        maxLength={100}
        error={tried && !role.trim() ? words.roleMissing : undefined}
      />
      <Field
        label={words.person}
        hint={words.personHint}
        value={person}
        onChange={setPerson}
        maxLength={200}
        optional
      />
    </Sheet>
  );
}
