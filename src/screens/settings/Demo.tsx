import { useState } from 'react';
import { openDemo, removeDemo } from '../../actions';
import { sayReason, tongueNow, w } from '../../words';
import { Button, Notice, Section } from '../parts';
import { say, useCollections, useDesk } from '../shell';

const words = w.settings;

/** The invented garden: open it, leave it, remove it for good. */
export function Demo() {
  const desk = useDesk();
  const { showDemo, showOwn } = useCollections();
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<string>();
  const open = async () => {
    setBusy(true);
    const opening = await openDemo(tongueNow().language);
    setBusy(false);
    if (opening.state === 'open') showDemo(opening.desk);
    else setProblem(sayReason(opening.reason));
  };
  const remove = async () => {
    setBusy(true);
    const outcome = await removeDemo(desk.invented ? desk : undefined);
    setBusy(false);
    if (!outcome.ok) return setProblem(sayReason(outcome.reason));
    say(words.demoRemoved);
    if (desk.invented) showOwn();
  };
  return (
    <Section title={words.demo} lead={desk.invented ? words.demoIn : words.demoWhat}>
      {problem && <Notice kind="problem" title={problem} />}
      <div className="row">
        {desk.invented ? (
          <Button onClick={showOwn}>{words.leaveDemo}</Button>
        ) : (
          <Button onClick={open} disabled={busy}>
            {words.openDemo}
          </Button>
        )}
        <Button kind="danger" onClick={remove} disabled={busy}>
          {words.removeDemo}
        </Button>
      </div>
    </Section>
  );
}
