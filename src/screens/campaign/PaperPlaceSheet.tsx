import { useState } from 'react';
import type { Outcome } from '../../actions';
import type { PaperItem } from '../../engine/trade';
import { w } from '../../words';
import { Button, Field, Notice, Sheet } from '../parts';
import { say, useDeed, useTyped } from '../shell';

const words = w.campaign.papers;

interface PaperPlaceSheetProps {
  readonly item: PaperItem;
  /** The paper that is looked through. */
  readonly about: string;
  readonly where: string;
  readonly keep: (where: string) => Promise<Outcome<object>>;
  readonly onClose: () => void;
}

/** Where in the paper a line was found, or where it was looked for. */
export function PaperPlaceSheet({ item, about, where, keep, onClose }: PaperPlaceSheetProps) {
  const [text, setText] = useState(where);
  const unkept = useTyped(['paper place', item.id, about], { text: [text, setText] });
  const { run, refused, busy } = useDeed(unkept);
  const save = () =>
    void run(
      () => keep(text.trim()),
      () => {
        say(words.placeSaid);
        onClose();
      },
    );
  return (
    <Sheet
      open
      title={item.name}
      onClose={onClose}
      actions={
        <Button kind="main" onClick={save} disabled={busy}>
          {words.keepPlace}
        </Button>
      }
    >
      {unkept.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.place}
        hint={words.placeHint}
        value={text}
        onChange={setText}
        maxLength={300}
        optional
        autoFocus
      />
    </Sheet>
  );
}
