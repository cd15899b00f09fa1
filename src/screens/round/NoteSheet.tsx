import { useState } from 'react';
import { w } from '../../words';
import { Button, Field, Sheet } from '../parts';

interface NoteSheetProps {
  readonly label: string;
  readonly note: string;
  readonly onKeep: (note: string) => void;
  readonly onClose: () => void;
}

/** A note in free words. Never needed; the one place of the round where something may be typed. */
export function NoteSheet({ label, note, onKeep, onClose }: NoteSheetProps) {
  const [text, setText] = useState(note);
  return (
    <Sheet
      open
      title={w.round.card.note}
      onClose={onClose}
      actions={
        <Button kind="main" size="big" onClick={() => onKeep(text.trim())}>
          {w.round.card.noteKeep}
        </Button>
      }
    >
      <Field label={label} kind="long" value={text} onChange={setText} optional maxLength={4000} autoFocus />
    </Sheet>
  );
}
