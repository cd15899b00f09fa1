import { type ReactNode, useState } from 'react';
import { w } from '../../words';
import { Button } from './Button';
import { Field } from './Field';
import { HoldButton } from './HoldButton';
import { Notice } from './Notice';
import { Sheet } from './Sheet';

const words = w.erasing;

interface EraseForGoodProps {
  readonly title: string;
  readonly onClose: () => void;
  /** What goes, what stays. */
  readonly children: ReactNode;
  readonly onErase: (reason: string) => Promise<void>;
  readonly refused: string | undefined;
  readonly busy: boolean;
  /** What is to go is not known yet. */
  readonly wait?: boolean;
}

/** Asked twice, because nothing brings it back: what goes, where it cannot reach, why, and then once more whether. */
export function EraseForGood({ title, onClose, children, onErase, refused, busy, wait = false }: EraseForGoodProps) {
  const [reason, setReason] = useState('');
  const [asked, setAsked] = useState(false);
  const [tried, setTried] = useState(false);
  const ask = () => {
    setTried(true);
    setAsked(reason.trim() !== '');
  };
  const write = (typed: string) => {
    setReason(typed);
    setAsked(false);
  };
  const missing = tried && reason.trim() === '';
  return (
    <Sheet
      open
      title={title}
      onClose={onClose}
      actions={
        asked ? (
          <>
            <p className="grow" role="alert">
              {words.askAgain}
            </p>
            <HoldButton kind="danger" disabled={busy} onHeld={() => void onErase(reason)}>
              {busy ? words.busy : words.yes}
            </HoldButton>
          </>
        ) : (
          <Button kind="danger" disabled={busy || wait} onClick={ask}>
            {words.ask}
          </Button>
        )
      }
    >
      {refused && <Notice kind="problem" title={refused} />}
      {children}
      <p>{words.reach}</p>
      <p className="soft small">{words.disk}</p>
      <Field
        label={words.reason}
        hint={words.reasonHint}
        value={reason}
        onChange={write}
        maxLength={500}
        error={missing ? words.reasonMissing : undefined}
      />
    </Sheet>
  );
}
