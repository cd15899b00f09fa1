import { useState } from 'react';
import { addPlanned, editPlanned, removePlanned, thingsOf } from '../../actions';
import { cardPhotos } from '../../engine/campaign';
import { type BodyOf, type Thing, zonesAt } from '../../engine/record';
import { date as dateWord, w } from '../../words';
import { Choices, Field, Notice, PhotosHere, Sheet, SheetActs } from '../parts';
import { peopleKept, peopleWhole, type SignedSaid } from '../parts/peopleSaid';
import { Select } from '../parts/Select';
import { SignedEntry } from '../parts/SignedEntry';
import { say, useDeed, useDesk, useQuestion } from '../shell';
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
  const { run, refused, busy } = useDeed();
  const done = (text: string) => () => {
    say(text);
    onClose();
  };
  const save = () => {
    setTried(true);
    if (!date || !peopleWhole(signed)) return;
    const body: BodyOf<'colourCard'> = {
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
    return card
      ? run(() => editPlanned(desk, 'colourCard', card.thing, body), done(words.saved))
      : run(() => addPlanned(desk, 'colourCard', body), done(words.saved));
  };
  return (
    <Sheet
      open
      title={card ? words.edit : words.add}
      onClose={onClose}
      actions={
        <SheetActs
          save={words.save}
          onSave={save}
          remove={
            card && {
              word: words.remove,
              go: () => void run(() => removePlanned(desk, 'colourCard', card.thing), done(words.removed)),
            }
          }
          busy={busy}
        />
      }
    >
      {refused && <Notice kind="problem" title={refused} />}
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
        options={zonesAt(file.record, file.today).map(({ thing, body }) => ({
          value: thing,
          label: w.sculptures.zone.edit(body.letter, body.name),
        }))}
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
    </Sheet>
  );
}
