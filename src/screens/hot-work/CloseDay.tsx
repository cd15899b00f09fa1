import { useState } from 'react';
import { closeHotDay, openHotDayAgain } from '../../actions';
import { againstClosing, type HotDayFacts } from '../../engine/heat';
import type { Thing } from '../../engine/record';
import { type NameOfThing, sayReason, w } from '../../words';
import { Button, Field, Notice, Section } from '../parts';
import { Reasons } from '../parts/Reasons';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { timeIn } from './typed';

const words = w.hotWork.close;

interface CloseDayProps {
  readonly day: Thing<'hotDay'>;
  readonly facts: HotDayFacts;
  readonly names: NameOfThing;
  readonly by: string;
  readonly mayWrite: boolean;
}

/** The day is closed once nothing stands against it; what does is said, and a touch on the button says it again. */
export function CloseDay({ day, facts, names, by: usually, mayWrite }: CloseDayProps) {
  const desk = useDesk();
  const [refused, setRefused] = useState<readonly string[]>([]);
  const [by, setBy] = useState(usually);
  const typed = useTyped(['hot day closed', undefined, day.thing], { by: [by, setBy] });
  const { run, busy } = useDeed(typed);
  const against = againstClosing(facts);
  const { closed } = day.body;
  const close = async () => {
    const came = await closeHotDay(desk, day.thing, by);
    setRefused(
      came.ok ? [] : against.length > 0 ? against.map((r) => sayReason(r, names)) : [sayReason(came.reason, names)],
    );
    if (came.ok) {
      typed.kept();
      say(words.done);
    }
    return came;
  };
  if (closed)
    return (
      <Section title={words.title}>
        <p className="strong">{w.hotWork.closedAt(timeIn(closed.at), closed.by)}</p>
        {mayWrite && (
          <div className="row not-printed">
            <Button
              disabled={busy}
              onClick={() =>
                void run(
                  () => openHotDayAgain(desk, day.thing),
                  () => say(words.opened),
                )
              }
            >
              {words.open}
            </Button>
          </div>
        )}
      </Section>
    );
  return (
    <Section title={words.title}>
      {against.length > 0 ? (
        <Notice kind="stop" title={words.against}>
          <Reasons reasons={against} nameOf={names} />
        </Notice>
      ) : (
        <p>{words.nothing}</p>
      )}
      {refused.length > 0 && <Notice kind="problem" title={refused.join(' ')} />}
      {mayWrite && (
        <>
          {typed.line}
          <div className="row by-hand not-printed">
            <Field label={words.by} value={by} onChange={setBy} maxLength={200} />
            <Button kind="main" size="big" disabled={busy} onClick={() => void close()}>
              {words.act}
            </Button>
          </div>
        </>
      )}
    </Section>
  );
}
