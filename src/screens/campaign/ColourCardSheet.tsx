import { useState } from 'react';
import { thingsOf } from '../../actions';
import { cardPhotos } from '../../engine/campaign';
import { type BodyOf, type Thing, zonesAt } from '../../engine/record';
import { date as dateWord, w, zoneOptions } from '../../words';
import { Choices, Field, PhotosHere } from '../parts';
import { peopleKept, peopleWhole, type SignedSaid } from '../parts/peopleSaid';
import { Select } from '../parts/Select';
import { SignedEntry } from '../parts/SignedEntry';
import { useDesk, useQuestion, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';
import type { OpenFile } from './OfCampaign';

const words = w.campaign.card.sheet;
type Field4 = (typeof cardPhotos)[number]['field'];

interface ColourCardSheetProps {
  readonly file: OpenFile;
  /** Undefined: a new one. */
  readonly card: Thing<'colourCard'> | undefined;
  readonly onClose: () => void;
}

/** The agreed colour, frozen: four photos, the panel and where it is, the words, who signed. */
export function ColourCardSheet({ file, card, onClose }: ColourCardSheetProps) {
  const desk = useDesk();
  const from = card?.body;
  const { sculpture } = file.campaign.body;
  const readings = useQuestion(thingsOf(desk, 'agreedColour', sculpture)) ?? [];
  const [zones, setZones] = useState<readonly string[]>(from?.zones ?? []);
  const [date, setDate] = useState<string>(from?.date ?? desk.today());
  const [said, setSaid] = useState(from?.words ?? '');
  const [photos, setPhotos] = useState<Readonly<Record<Field4, string | undefined>>>(
    () =>
      Object.fromEntries(cardPhotos.map(({ field }) => [field, from?.[field]])) as Record<Field4, string | undefined>,
  );
  const [panel, setPanel] = useState(from?.panel ?? '');
  const [kept, setKept] = useState(from?.kept ?? '');
  const [agreedColour, setAgreedColour] = useState<string>(from?.agreedColour ?? '');
  const [signed, setSigned] = useState<readonly SignedSaid[]>(from?.signed ?? []);
  const [note, setNote] = useState(from?.note ?? '');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['colour card', card?.thing, file.campaign.thing], {
    zones: [zones, setZones],
    date: [date, setDate],
    said: [said, setSaid],
    photos: [photos, setPhotos],
    panel: [panel, setPanel],
    kept: [kept, setKept],
    agreedColour: [agreedColour, setAgreedColour],
    signed: [signed, setSigned],
    note: [note, setNote],
  });
  const body = (): BodyOf<'colourCard'> | undefined => {
    setTried(true);
    if (!date || !peopleWhole(signed)) return undefined;
    return {
      sculpture,
      campaign: file.campaign.thing,
      zones: [...zones],
      date,
      words: said.trim(),
      ...photos,
      panel: panel.trim() || undefined,
      kept: kept.trim() || undefined,
      agreedColour: agreedColour || undefined,
      signed: peopleKept(signed),
      note: note.trim() || undefined,
    };
  };
  return (
    <PlannedSheet
      kind="colourCard"
      thing={card?.thing}
      title={card ? words.edit : words.add}
      words={words}
      body={body}
      typed={typed}
      onClose={onClose}
    >
      <Field label={words.words} hint={words.wordsHint} kind="long" value={said} onChange={setSaid} maxLength={2000} />
      <Field
        label={words.date}
        kind="date"
        value={date}
        onChange={setDate}
        short
        error={tried && !date ? words.dayMissing : undefined}
      />
      <Choices
        label={words.zones}
        options={zoneOptions(zonesAt(file.record, file.today))}
        values={zones}
        onChange={setZones}
      />
      {cardPhotos.map(({ field }) => {
        const photo = photos[field];
        return (
          <PhotosHere
            key={field}
            desk={desk}
            sculpture={sculpture}
            as="other"
            label={w.campaign.card.photos[field]}
            photos={photo ? [photo] : []}
            onChange={(list) => setPhotos((before) => ({ ...before, [field]: list[0] }))}
            most={1}
          />
        );
      })}
      <div className="fields">
        <Field label={words.panel} value={panel} onChange={setPanel} maxLength={200} optional />
        <Field label={words.kept} value={kept} onChange={setKept} maxLength={300} optional />
      </div>
      {readings.length > 0 && (
        <Select
          label={words.agreedColour}
          value={agreedColour}
          onChange={setAgreedColour}
          options={[
            { value: '', label: words.noReading },
            ...readings.map(({ thing, body }) => ({ value: thing, label: `${body.name}, ${dateWord(body.date)}` })),
          ]}
        />
      )}
      <SignedEntry label={words.signed} signed={signed} onChange={setSigned} today={desk.today()} tried={tried} />
      <Field label={w.campaign.sheet.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </PlannedSheet>
  );
}
