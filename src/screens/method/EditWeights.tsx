import { useState } from 'react';
import { setScale } from '../../actions';
import type { BodyOf } from '../../engine/record';
import { defaultScale, type KindOfFinding, kinds } from '../../engine/trade';
import { fixed, number, numberTyped, sayReason, typedNumber, w } from '../../words';
import { Button, Field, Notice } from '../parts';
import { say, useDesk, useTyped } from '../shell';
import { kindsByGroup } from './groups';

const words = w.method;
const least = 0.05;
const most = 1;
const step = 0.05;

/** Twentieths, so that steps never leave dust in the last digits. */
const stepped = (hazard: number, by: number): number =>
  Math.min(most, Math.max(least, Math.round((hazard + by) / step) / Math.round(1 / step)));

interface EditWeightsProps {
  readonly own: BodyOf<'scale'> | null;
  readonly onDone: () => void;
}

/** The collection's own hazards and action level. Only what differs from the project's numbers is kept. */
export function EditWeights({ own, onDone }: EditWeightsProps) {
  const desk = useDesk();
  const startLevel = numberTyped(own?.actionLevel ?? defaultScale.actionLevel);
  const [hazards, setHazards] = useState<Readonly<Record<string, number>>>(own?.hazards ?? {});
  const [level, setLevel] = useState(startLevel);
  const [fault, setFault] = useState('');
  const typed = useTyped(['weights', 'all'], { hazards: [hazards, setHazards], level: [level, setLevel] });
  const of = (kind: KindOfFinding) => hazards[kind.id] ?? kind.hazard;
  const was = (kind: KindOfFinding) => own?.hazards[kind.id] ?? kind.hazard;
  const changed = kinds.filter((kind) => of(kind) !== was(kind)).length + (level === startLevel ? 0 : 1);
  const next = (own?.version ?? 0) + 1;

  const store = async (
    to: { readonly hazards: Readonly<Record<string, number>>; readonly actionLevel: number },
    said: (n: number) => string,
  ) => {
    const outcome = await setScale(desk, to);
    if (!outcome.ok) {
      setFault(sayReason(outcome.reason));
      return;
    }
    typed.kept();
    say(said(outcome.version));
    onDone();
  };
  const keep = () => {
    const actionLevel = typedNumber(level);
    if (actionLevel === undefined || actionLevel > 100) {
      setFault(words.levelOutOfRange);
      return;
    }
    // What this version's table does not know (a stain's hazard, kinds of a newer version) stays as it is set.
    const notShown = Object.entries(hazards).filter(([id]) => !kinds.some((kind) => kind.id === id));
    const differing = kinds.filter((kind) => of(kind) !== kind.hazard).map((kind) => [kind.id, of(kind)] as const);
    void store({ hazards: Object.fromEntries([...notShown, ...differing]), actionLevel }, words.kept);
  };
  const reset = () => store({ hazards: {}, actionLevel: defaultScale.actionLevel }, words.resetDone);

  return (
    <div className="stack">
      {typed.line}
      <p>{words.changeWhat}</p>
      <Field
        label={words.actionLevel}
        hint={words.actionLevelWhat}
        kind="number"
        value={level}
        onChange={setLevel}
        short
      />
      {kindsByGroup.map(({ group, kinds: rows }) => (
        <fieldset key={group} className="choice">
          <legend>{words.group[group]}</legend>
          <ul className="bare weights">
            {rows.map((kind) => (
              <li key={kind.id} className={of(kind) === was(kind) ? 'weight' : 'weight changed'}>
                <span className="grow">
                  {kind.name}
                  {of(kind) !== kind.hazard && <span className="soft small"> {words.own(number(kind.hazard, 2))}</span>}
                </span>
                <Button
                  aria-label={words.lower(kind.name)}
                  disabled={of(kind) <= least}
                  onClick={() => setHazards({ ...hazards, [kind.id]: stepped(of(kind), -step) })}
                >
                  −
                </Button>
                <output className="figures strong weight-figure" aria-label={words.hazardOf(kind.name)}>
                  {fixed(of(kind), 2)}
                </output>
                <Button
                  aria-label={words.raise(kind.name)}
                  disabled={of(kind) >= most}
                  onClick={() => setHazards({ ...hazards, [kind.id]: stepped(of(kind), step) })}
                >
                  +
                </Button>
              </li>
            ))}
          </ul>
        </fieldset>
      ))}
      {fault && <Notice kind="problem" title={fault} />}
      <div className="page-actions by-hand">
        <p className="grow">{changed === 0 ? words.unchangedYet : words.changedCount(changed)}</p>
        <Button onClick={onDone}>{words.stopChange}</Button>
        {own && (
          <Button kind="danger" onClick={reset}>
            {words.reset}
          </Button>
        )}
        <Button kind="main" disabled={changed === 0} onClick={keep}>
          {words.keep(next)}
        </Button>
      </div>
    </div>
  );
}
