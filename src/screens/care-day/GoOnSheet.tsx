import { useState } from 'react';
import type { Gate } from '../../engine/weather';
import { sayReason, w } from '../../words';
import { Button, Field, Notice, Sheet } from '../parts';
import { useTyped } from '../shell';

const words = w.careDay;

interface GoOnSheetProps {
  readonly sculpture: string;
  readonly gate: Gate;
  readonly refused: string | undefined;
  readonly busy: boolean;
  readonly onKeep: (overridden: { by: string; why: string }, kept: () => void) => void;
  readonly onClose: () => void;
}

/** Going on against the reading: who, and why. Both are kept with it. */
export function GoOnSheet({ sculpture, gate, refused, busy, onKeep, onClose }: GoOnSheetProps) {
  const [by, setBy] = useState('');
  const [why, setWhy] = useState('');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['going on', undefined, sculpture], { by: [by, setBy], why: [why, setWhy] });
  const keep = () => {
    setTried(true);
    if (by.trim() && why.trim()) onKeep({ by: by.trim(), why: why.trim() }, typed.kept);
  };
  return (
    <Sheet
      open
      title={words.goOnTitle}
      onClose={onClose}
      actions={
        <Button kind="main" size="round" disabled={busy} onClick={keep}>
          {words.goOnKeep}
        </Button>
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Notice kind="caution" title={words.says[gate.says]}>
        <ul>
          {gate.reasons.map((reason) => (
            <li key={reason.code}>{sayReason(reason)}</li>
          ))}
        </ul>
      </Notice>
      <p>{words.goOnWhat}</p>
      <Field
        label={words.by}
        value={by}
        onChange={setBy}
        maxLength={200}
        error={tried && !by.trim() ? words.byMissing : undefined}
      />
      <Field
        label={words.why}
        kind="long"
        value={why}
        onChange={setWhy}
        maxLength={1000}
        error={tried && !why.trim() ? words.whyMissing : undefined}
      />
    </Sheet>
  );
}
