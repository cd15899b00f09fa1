import { useState } from 'react';
import type { BodyOf, Thing } from '../../engine/record';
import { w } from '../../words';
import { Field } from '../parts';
import { useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';

const words = w.paperHub.given;

interface GivenOutSheetProps {
  /** What is known of a copy before it is noted, or what was noted. */
  readonly copy: BodyOf<'paperIssued'>;
  /** The note that is changed; undefined: a new one. */
  readonly thing?: Thing<'paperIssued'>['thing'];
  readonly onClose: () => void;
}

/** One copy of a paper that left: to whom and when. */
export function GivenOutSheet({ copy, thing, onClose }: GivenOutSheetProps) {
  const [to, setTo] = useState(copy.to ?? '');
  const [day, setDay] = useState(copy.date);
  const [by, setBy] = useState(copy.by);
  const [note, setNote] = useState(copy.note ?? '');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['given out', thing, copy.paper, copy.sculpture], {
    to: [to, setTo],
    day: [day, setDay],
    by: [by, setBy],
    note: [note, setNote],
  });
  const body = (): BodyOf<'paperIssued'> | undefined => {
    setTried(true);
    if (!day) return undefined;
    return { ...copy, by: by.trim(), date: day, to: to.trim() || undefined, note: note.trim() || undefined };
  };
  return (
    <PlannedSheet
      kind="paperIssued"
      thing={thing}
      title={thing ? words.edit : words.add}
      words={words}
      body={body}
      typed={typed}
      onClose={onClose}
    >
      <p className="strong">{copy.title}</p>
      <Field label={words.to} value={to} onChange={setTo} maxLength={300} optional />
      <Field
        label={words.date}
        kind="date"
        value={day}
        onChange={setDay}
        error={tried && !day ? words.dateMissing : undefined}
        short
      />
      <Field label={words.by} value={by} onChange={setBy} maxLength={200} optional />
      <Field label={words.remark} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </PlannedSheet>
  );
}
