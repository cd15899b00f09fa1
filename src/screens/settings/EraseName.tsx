import { useState } from 'react';
import { eraseName, type Naming, namesFound, type SurveyorRow } from '../../actions';
import { w } from '../../words';
import { Choice, Reading, Tick } from '../parts';
import { EraseForGood } from '../parts/EraseForGood';
import { LongList } from '../parts/LongList';
import { say, useDeed, useDesk, useQuestion } from '../shell';

const words = w.erasing;

interface EraseNameProps {
  readonly people: readonly SurveyorRow[];
  readonly onClose: () => void;
}

/** Erases a person's name: whose, where else it stands, and all that a person should know before. */
export function EraseName({ people, onClose }: EraseNameProps) {
  const desk = useDesk();
  const named = people.filter(({ name }) => name !== undefined);
  const [who, setWho] = useState(named[0]?.thing ?? '');
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const found = useQuestion(namesFound(desk, who));
  const { run, refused, busy } = useDeed();
  const role = people.find(({ thing }) => thing === who)?.role ?? '';
  const going = found?.elsewhere.filter(({ canGo, thing }) => canGo && !left.has(thing)) ?? [];
  const erase = (reason: string) =>
    run(
      () => eraseName(desk, who, { reason, alsoIn: going.map(({ thing }) => thing) }),
      () => {
        say(words.done);
        onClose();
      },
    );
  const turn = (thing: string, goes: boolean) => {
    const next = new Set(left);
    if (goes) next.delete(thing);
    else next.add(thing);
    setLeft(next);
  };
  return (
    <EraseForGood title={words.name} onClose={onClose} onErase={erase} refused={refused} busy={busy} wait={!found}>
      {named.length > 1 && (
        <Choice
          label={words.nameWhose}
          options={named.map((person) => ({ value: person.thing, label: person.name ?? '', detail: person.role }))}
          value={who}
          onChange={setWho}
        />
      )}
      {found ? (
        <>
          <p>{words.nameGoes(found.words[0] ?? '')}</p>
          {found.words.length > 1 && <p>{words.nameEarlier(found.words.slice(1).join(', '))}</p>}
          <p>{words.nameStays(role)}</p>
          <Elsewhere all={found.elsewhere} role={role} left={left} turn={turn} />
        </>
      ) : (
        <>
          <p>{words.looking}</p>
          <Reading />
        </>
      )}
      <p>{words.nameReach}</p>
    </EraseForGood>
  );
}

interface ElsewhereProps {
  readonly all: readonly Naming[];
  readonly role: string;
  readonly left: ReadonlySet<string>;
  readonly turn: (thing: string, goes: boolean) => void;
}

function Elsewhere({ all, role, left, turn }: ElsewhereProps) {
  const can = all.filter(({ canGo }) => canGo);
  if (all.length === 0) return <p>{words.elsewhereNone}</p>;
  return (
    <div className="stack">
      <h3>{words.elsewhere}</h3>
      <p>{words.elsewhereWhat(role)}</p>
      <LongList
        className="stack"
        rows={can}
        show={({ thing, kind, text }) => (
          <li key={thing}>
            <Tick
              label={text}
              detail={w.carry.holdKinds[kind] ?? kind}
              checked={!left.has(thing)}
              onChange={(goes) => turn(thing, goes)}
            />
          </li>
        )}
      />
      {can.length < all.length && <p>{words.cannotGo(all.length - can.length)}</p>}
    </div>
  );
}
