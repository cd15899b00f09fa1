import { useState } from 'react';
import { addSurveyor, setSurveyor, settings, surveyors } from '../../actions';
import { w } from '../../words';
import { AddIcon, Button, Choice, Field, Notice, Reading, Section, Sheet } from '../parts';
import { say, useDeed, useDesk, useQuestion, useTyped } from '../shell';
import { EraseName } from './EraseName';

const words = w.settings;

/** One touch says who is at work; each record is marked with it. */
export function WhoIsAtWork() {
  const people = useQuestion(surveyors(useDesk()));
  const { surveyor } = useQuestion(settings);
  const [adding, setAdding] = useState(false);
  const [erasing, setErasing] = useState(false);
  if (!people) return <Reading />;
  return (
    <Section
      title={words.who}
      actions={
        <Button icon={<AddIcon />} onClick={() => setAdding(true)}>
          {words.addPerson}
        </Button>
      }
    >
      {people.length === 0 ? (
        <p className="soft">{words.whoNone}</p>
      ) : (
        <Choice
          label={words.who}
          labelUnseen
          hint={words.whoHint}
          options={people.map(({ thing, role, name }) => ({ value: thing, label: role, detail: name }))}
          value={surveyor}
          onChange={(thing) => {
            setSurveyor(thing);
            say(words.set(people.find((person) => person.thing === thing)?.role ?? ''));
          }}
        />
      )}
      {people.some(({ name }) => name !== undefined) && (
        <div className="row">
          <Button kind="quiet" onClick={() => setErasing(true)}>
            {w.erasing.nameOpen}
          </Button>
        </div>
      )}
      <p className="soft small">{w.erasing.nameOthers}</p>
      {erasing && <EraseName people={people} onClose={() => setErasing(false)} />}
      {adding && <AddPerson onClose={() => setAdding(false)} />}
    </Section>
  );
}

function AddPerson({ onClose }: { readonly onClose: () => void }) {
  const desk = useDesk();
  const [role, setRole] = useState('');
  const [name, setName] = useState('');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['person', undefined], { role: [role, setRole], name: [name, setName] });
  const { run, refused, busy } = useDeed(typed);
  const add = () => {
    setTried(true);
    if (!role.trim()) return;
    return run(
      () => addSurveyor(desk, { role, name }),
      ({ surveyor }) => {
        setSurveyor(surveyor);
        say(words.added(role.trim()));
        onClose();
      },
    );
  };
  return (
    <Sheet
      open
      title={words.addPerson}
      onClose={onClose}
      actions={
        <Button kind="main" onClick={add} disabled={busy}>
          {words.addDo}
        </Button>
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.role}
        hint={words.roleHint}
        value={role}
        onChange={setRole}
        maxLength={100}
        error={tried && !role.trim() ? words.roleMissing : undefined}
      />
      <Field label={words.name} hint={words.nameHint} value={name} onChange={setName} maxLength={200} optional />
    </Sheet>
  );
}
