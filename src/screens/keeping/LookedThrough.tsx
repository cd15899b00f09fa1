import { useRef, useState } from 'react';
import {
  type Checked,
  type Checking,
  checkStore,
  clearStray,
  lastChecked,
  makeAnew,
  type Outcome,
  setDamagedAside,
} from '../../actions';
import { date, w } from '../../words';
import { Button, Notice, Progress, Section } from '../parts';
import { say, useDeed, useDesk, useQuestion } from '../shell';
import { Found } from './Found';

const words = w.keeping;

type Far = { readonly done: number; readonly all: number };

/** Whether all that lies here is whole, and what to do where it is not. */
export function LookedThrough() {
  const desk = useDesk();
  const last = useQuestion(lastChecked(desk));
  const [far, setFar] = useState<Far>();
  const leave = useRef<AbortController>(null);
  const { run, refused, busy } = useDeed();
  /** One at a time, with how far it is and a way to leave off. */
  const look = async (deed: (checking: Checking) => Promise<Outcome<{ checked: Checked }>>, done?: string) => {
    leave.current = new AbortController();
    setFar({ done: 0, all: 0 });
    await run(
      () => deed({ heard: (did, all) => setFar({ done: did, all }), signal: leave.current!.signal }),
      ({ checked }) => say(done ?? words.throughOn(date(checked.day))),
    );
    setFar(undefined);
  };
  return (
    <Section title={words.through} lead={words.throughLead}>
      {refused && <Notice kind="problem" title={refused} />}
      {last === null && !far && <p>{words.throughNever}</p>}
      {last && !far && (
        <Found
          found={last}
          busy={busy}
          onAnew={() => look((checking) => makeAnew(desk, checking), words.anewDone)}
          onAside={() =>
            run(
              () => setDamagedAside(desk),
              ({ photos }) => say(words.alteredDone(photos)),
            )
          }
          onClear={() =>
            run(
              () => clearStray(desk),
              ({ photos }) => say(words.strayDone(photos)),
            )
          }
        />
      )}
      {far ? (
        <Progress label={words.throughUnderWay} {...far} onCancel={() => leave.current?.abort()} />
      ) : (
        <div className="row not-printed">
          <Button onClick={() => look((checking) => checkStore(desk, checking))} disabled={busy}>
            {words.throughDo}
          </Button>
        </div>
      )}
    </Section>
  );
}
