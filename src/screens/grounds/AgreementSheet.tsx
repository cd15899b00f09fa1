import { useState } from 'react';
import type { BodyOf, Thing } from '../../engine/record';
import { groundsTopicOf, groundsTopics } from '../../engine/trade';
import { midSentence, type WorkNamed, w } from '../../words';
import { Button, Choice, Choices, Field } from '../parts';
import { useDesk, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';

const words = w.grounds;

interface AgreementSheetProps {
  readonly works: readonly WorkNamed[];
  /** Undefined: a new one. */
  readonly agreement: Thing<'groundsAgreement'> | undefined;
  readonly onClose: () => void;
}

/** One agreement: about what, in whose words, with whom, and when it is looked at again. */
export function AgreementSheet({ works, agreement, onClose }: AgreementSheetProps) {
  const desk = useDesk();
  const from = agreement?.body;
  const [topic, setTopic] = useState(from?.topic ?? groundsTopics[0]?.id ?? '');
  const [text, setText] = useState(from?.text ?? '');
  const [role, setRole] = useState(from?.who.role ?? '');
  const [name, setName] = useState(from?.who.name ?? '');
  const [about, setAbout] = useState<readonly string[]>(from?.works ?? []);
  const [agreed, setAgreed] = useState(from?.agreed ?? desk.today());
  const [review, setReview] = useState(from?.review ?? '');
  const [ended, setEnded] = useState(from?.ended ?? '');
  const [note, setNote] = useState(from?.note ?? '');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['agreement on the grounds', agreement?.thing], {
    topic: [topic, setTopic],
    text: [text, setText],
    role: [role, setRole],
    name: [name, setName],
    about: [about, setAbout],
    agreed: [agreed, setAgreed],
    review: [review, setReview],
    ended: [ended, setEnded],
    note: [note, setNote],
  });
  const ask = groundsTopicOf(topic)?.ask ?? '';
  const body = (): BodyOf<'groundsAgreement'> | undefined => {
    setTried(true);
    const nobody = !role.trim() && !name.trim();
    if (!text.trim() || nobody || !agreed) return undefined;
    return {
      who: { role: role.trim(), ...(name.trim() ? { name: name.trim() } : {}) },
      topic,
      text: text.trim(),
      works: about.length > 0 ? [...about] : undefined,
      agreed,
      review: review || undefined,
      ended: ended || undefined,
      note: note.trim() || undefined,
    };
  };
  return (
    <PlannedSheet
      kind="groundsAgreement"
      thing={agreement?.thing}
      title={agreement ? words.edit : words.add}
      words={words}
      body={body}
      typed={typed}
      onClose={onClose}
    >
      <Choice
        label={words.topic}
        options={groundsTopics.map(({ id, name: label }) => ({ value: id, label }))}
        value={topic}
        onChange={setTopic}
      />
      {ask && text.trim() === '' && (
        <div className="row">
          <p className="grow soft">{ask}</p>
          <Button onClick={() => setText(ask)}>{words.begin}</Button>
        </div>
      )}
      <Field
        label={words.text}
        kind="long"
        value={text}
        onChange={setText}
        maxLength={2000}
        error={tried && !text.trim() ? words.textMissing : undefined}
      />
      <Field
        label={`${words.with}: ${midSentence(words.role)}`}
        value={role}
        onChange={setRole}
        maxLength={100}
        error={tried && !role.trim() && !name.trim() ? words.roleMissing : undefined}
      />
      <Field label={words.name} value={name} onChange={setName} maxLength={200} optional />
      {works.length > 0 && (
        <Choices
          label={words.works}
          hint={words.allWorks}
          options={works.map(({ thing, name: label }) => ({ value: thing, label }))}
          values={about}
          onChange={setAbout}
        />
      )}
      <Field
        label={words.agreed}
        kind="date"
        value={agreed}
        onChange={setAgreed}
        error={tried && !agreed ? words.dayMissing : undefined}
        short
      />
      <Field label={words.review} kind="date" value={review} onChange={setReview} short optional />
      {agreement && <Field label={words.ended} kind="date" value={ended} onChange={setEnded} short optional />}
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </PlannedSheet>
  );
}
