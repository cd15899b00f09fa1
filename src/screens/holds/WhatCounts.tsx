import { useState } from 'react';
import { setHoldRules } from '../../actions';
import { holdNumbers, rulesOf } from '../../engine/hold';
import type { BodyOf } from '../../engine/record';
import { percentTyped, share, typedPercent, w } from '../../words';
import { Button, Field, Notice, Section } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';

const words = w.holds;

interface WhatCountsProps {
  readonly own: BodyOf<'holdRules'> | null;
  readonly mayWrite: boolean;
}

/** The level and the chance in force, and a way to change them. */
export function WhatCounts({ own, mayWrite }: WhatCountsProps) {
  const [editing, setEditing] = useState(false);
  const { returnLevel, chance } = rulesOf({ holdRules: own });
  return (
    <Section
      title={words.rules}
      lead={words.rulesWhat}
      actions={
        mayWrite &&
        !editing && (
          <span className="not-printed">
            <Button onClick={() => setEditing(true)}>{words.change}</Button>
          </span>
        )
      }
    >
      <p>
        {words.inForce(share(returnLevel), share(chance))} {own ? words.version(own.version) : words.projects}
      </p>
      {!mayWrite && <p className="soft not-printed">{words.readingOnly}</p>}
      {editing && <ChangeRules own={own} onDone={() => setEditing(false)} />}
    </Section>
  );
}

function ChangeRules({ own, onDone }: Pick<WhatCountsProps, 'own'> & { readonly onDone: () => void }) {
  const desk = useDesk();
  const { returnLevel, chance } = rulesOf({ holdRules: own });
  const [level, setLevel] = useState(percentTyped(returnLevel));
  const [much, setMuch] = useState(percentTyped(chance));
  const [fault, setFault] = useState('');
  const typed = useTyped(['hold rules', 'all'], { level: [level, setLevel], much: [much, setMuch] });
  const { run, refused, busy } = useDeed(typed);
  const store = (to: { readonly returnLevel: number; readonly chance: number }) =>
    run(
      () => setHoldRules(desk, to),
      ({ version }) => {
        say(words.kept(version));
        onDone();
      },
    );
  const keep = () => {
    const [a, b] = [typedPercent(level), typedPercent(much)];
    if (a === undefined || b === undefined) {
      setFault(words.notANumber);
      return;
    }
    setFault('');
    void store({ returnLevel: a / 100, chance: b / 100 });
  };
  const projects = { returnLevel: holdNumbers.returnLevel.value, chance: holdNumbers.chance.value };
  return (
    <div className="stack not-printed">
      {typed.line}
      <Field
        label={words.level}
        hint={words.levelHint}
        takes="percent"
        unit={words.percent}
        value={level}
        onChange={setLevel}
        short
      />
      <Field
        label={words.chance}
        hint={words.chanceHint}
        takes="percent"
        unit={words.percent}
        value={much}
        onChange={setMuch}
        short
      />
      {(fault || refused) && <Notice kind="problem" title={fault || refused} />}
      <div className="row by-hand">
        <Button onClick={onDone}>{words.stop}</Button>
        {own && <Button onClick={() => void store(projects)}>{words.reset}</Button>}
        <Button kind="main" disabled={busy} onClick={keep}>
          {words.keep}
        </Button>
      </div>
    </div>
  );
}
