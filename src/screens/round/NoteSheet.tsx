import { useState } from 'react';
import { useLocation } from 'wouter';
import { w } from '../../words';
import { Button, Field, Sheet } from '../parts';
import { useTyped } from '../shell';

interface NoteSheetProps {
  /** The finding it is of, or 'zone': round and zone stand in the address. */
  readonly of: string;
  readonly label: string;
  readonly note: string;
  readonly onKeep: (note: string) => void;
  readonly onClose: () => void;
}

/** A note in free words. Never needed; the one place of the round where something may be typed. */
export function NoteSheet({ of, label, note, onKeep, onClose }: NoteSheetProps) {
  const [where] = useLocation();
  const [text, setText] = useState(note);
  const typed = useTyped(['note', `${where} ${of}`], { text: [text, setText] });
  const keep = () => {
    typed.kept();
    onKeep(text.trim());
  };
  return (
    <Sheet
      open
      title={w.round.card.note}
      onClose={onClose}
      actions={
        <Button kind="main" size="big" onClick={keep}>
          {w.round.card.noteKeep}
        </Button>
      }
    >
      {typed.line}
      <Field label={label} kind="long" value={text} onChange={setText} optional maxLength={4000} autoFocus />
    </Sheet>
  );
}
