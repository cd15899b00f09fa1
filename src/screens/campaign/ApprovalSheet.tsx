import { useState } from 'react';
import { type BodyOf, type Thing, zonesAt } from '../../engine/record';
import { fieldText, typedMeasure, w, zoneOptions } from '../../words';
import { Choice, Field, PhotosHere } from '../parts';
import { peopleKept, peopleWhole, type SignedSaid } from '../parts/peopleSaid';
import { Select } from '../parts/Select';
import { SignedEntry } from '../parts/SignedEntry';
import { useDesk, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';

import type { OpenFile } from './OfCampaign';

const words = w.campaign.approvals.sheet;
const { of: sorts, answers } = w.campaign.approvals;

type Of = BodyOf<'approval'>['of'];
type Answer = BodyOf<'approval'>['answer'];

interface ApprovalSheetProps {
  readonly file: OpenFile;
  /** Undefined: a new one. */
  readonly approval: Thing<'approval'> | undefined;
  readonly onClose: () => void;
}

/** One question put to those who must say yes: what was shown, what was said, who signed. */
export function ApprovalSheet({ file, approval, onClose }: ApprovalSheetProps) {
  const desk = useDesk();
  const from = approval?.body;
  const { sculpture } = file.campaign.body;
  const [of, setOf] = useState<Of>(from?.of ?? 'sample area');
  const [zone, setZone] = useState<string>(from?.zone ?? '');
  const [m2, setM2] = useState(fieldText('area', from?.m2));
  const [date, setDate] = useState<string>(from?.date ?? desk.today());
  const [answer, setAnswer] = useState<Answer>(from?.answer ?? 'open');
  const [said, setSaid] = useState(from?.words ?? '');
  const [photos, setPhotos] = useState<readonly string[]>(from?.photos ?? []);
  const [signed, setSigned] = useState<readonly SignedSaid[]>(from?.signed ?? []);
  const [note, setNote] = useState(from?.note ?? '');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['approval', approval?.thing, file.campaign.thing], {
    of: [of, setOf],
    zone: [zone, setZone],
    m2: [m2, setM2],
    date: [date, setDate],
    answer: [answer, setAnswer],
    said: [said, setSaid],
    photos: [photos, setPhotos],
    signed: [signed, setSigned],
    note: [note, setNote],
  });
  const size = m2.trim() === '' ? undefined : typedMeasure('area', m2);
  const sizeWrong = m2.trim() !== '' && !size;
  const body = (): BodyOf<'approval'> | undefined => {
    setTried(true);
    if (!said.trim() || !date || sizeWrong || !peopleWhole(signed)) return undefined;
    return {
      sculpture,
      campaign: file.campaign.thing,
      of,
      zone: zone || undefined,
      m2: size,
      date,
      answer,
      words: said.trim(),
      photos: photos.length > 0 ? [...photos] : undefined,
      signed: peopleKept(signed),
      note: note.trim() || undefined,
    };
  };
  return (
    <PlannedSheet
      kind="approval"
      thing={approval?.thing}
      title={approval ? words.edit : words.add}
      words={words}
      body={body}
      typed={typed}
      onClose={onClose}
    >
      <Choice
        label={words.of}
        options={(Object.keys(sorts) as Of[]).map((value) => ({ value, label: sorts[value] }))}
        value={of}
        onChange={setOf}
      />
      <div className="fields">
        <Select
          label={words.zone}
          value={zone}
          onChange={setZone}
          options={[{ value: '', label: words.noZone }, ...zoneOptions(zonesAt(file.record, file.today))]}
        />
        <Field
          label={words.m2}
          takes="area"
          value={m2}
          onChange={setM2}
          maxLength={10}
          short
          optional
          error={tried && sizeWrong ? words.m2Wrong : undefined}
        />
        <Field
          label={words.date}
          kind="date"
          value={date}
          onChange={setDate}
          short
          error={tried && !date ? words.dayMissing : undefined}
        />
      </div>
      <Field
        label={words.words}
        kind="long"
        value={said}
        onChange={setSaid}
        maxLength={2000}
        error={tried && !said.trim() ? words.wordsMissing : undefined}
      />
      <PhotosHere
        desk={desk}
        sculpture={sculpture}
        zone={zone || undefined}
        as={zone ? 'zone' : 'other'}
        label={words.photos}
        photos={photos}
        onChange={setPhotos}
      />
      <Choice
        label={w.campaign.approvals.answer}
        options={(Object.keys(answers) as Answer[]).map((value) => ({ value, label: answers[value] }))}
        value={answer}
        onChange={setAnswer}
      />
      <SignedEntry
        label={words.signed}
        hint={words.signedHint}
        signed={signed}
        onChange={setSigned}
        today={desk.today()}
        tried={tried}
      />
      <Field label={w.campaign.sheet.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </PlannedSheet>
  );
}
