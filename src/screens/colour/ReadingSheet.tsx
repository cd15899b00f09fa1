import { useState } from 'react';
import { addReading, editReading, removeReading } from '../../actions';
import { type Spot, spotKey } from '../../engine/colour';
import type { Thing } from '../../engine/record';
import { date, w } from '../../words';
import { Choice, Field, Notice, Sheet, SheetActs } from '../parts';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { FitsNothing } from './FitsNothing';
import { PlacingsEntry } from './PlacingsEntry';
import { type PlacesOfWork, placeName, placeOptions, zoneOfPlace } from './placeNames';
import { conditionsOf, draftOf, newDraft, type ReadingDraft, readingFields } from './readingDraft';
import { WayEntry } from './WayEntry';
import { wayInWords } from './wayOfReading';

const words = w.colour.sheet;
const wayWords = w.colour.way;
const surfaces = ['dry', 'damp', 'wet'] as const;

export interface ReadingSheetProps {
  readonly sculpture: string;
  readonly places: PlacesOfWork;
  readonly spots: readonly Spot[];
  readonly agreed: readonly Thing<'agreedColour'>[];
  /** Undefined: a new one, of `spot` where that is given. */
  readonly reading?: Thing<'reading'> | undefined;
  readonly spot?: Spot | undefined;
  readonly onClose: () => void;
}

const latest = (spots: readonly Spot[], but: string | undefined): Thing<'reading'> | undefined =>
  spots
    .flatMap(({ readings }) => readings)
    .filter(({ thing }) => thing !== but)
    .sort((a, b) => a.body.date.localeCompare(b.body.date))
    .at(-1);

/** What an instrument read on one spot: where, when, the figures, and how they were read. */
export function ReadingSheet({ sculpture, places, spots, agreed, reading, spot, onClose }: ReadingSheetProps) {
  const desk = useDesk();
  const last = reading ? undefined : latest(spots, undefined);
  const [draft, setDraft] = useState<ReadingDraft>(() =>
    reading ? draftOf(reading) : newDraft(desk.today(), spot, last),
  );
  const [tried, setTried] = useState(false);
  const typed = useTyped(['colour reading', reading?.thing, sculpture, spot?.about, spot?.position], {
    draft: [draft, setDraft],
  });
  const { run, refused, busy } = useDeed(typed);
  const set = <K extends keyof ReadingDraft>(key: K, value: ReadingDraft[K]) => setDraft({ ...draft, [key]: value });
  const done = (said: string) => () => {
    say(said);
    onClose();
  };
  const zone = zoneOfPlace(places, draft.about);
  const save = () => {
    setTried(true);
    const fields = readingFields(draft, last, zone);
    if (!fields) return;
    return reading
      ? run(() => editReading(desk, reading.thing, fields), done(words.edited))
      : run(() => addReading(desk, sculpture, fields), done(words.saved));
  };
  const way = conditionsOf(draft, last);
  const ofSpot = spots.find(({ key }) => key === spotKey(draft.about || undefined, draft.position));
  return (
    <Sheet
      open
      title={reading ? words.edit : words.add}
      onClose={onClose}
      actions={
        <SheetActs
          save={words.save}
          onSave={save}
          remove={
            reading && {
              word: words.remove,
              go: () => void run(() => removeReading(desk, reading.thing), done(words.removed)),
            }
          }
          busy={busy}
        />
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      {spots.length > 0 && !reading && (
        <Select
          label={words.spot}
          value={ofSpot?.key ?? ''}
          onChange={(key) => {
            const chosen = spots.find((each) => each.key === key);
            setDraft({ ...draft, about: chosen?.about ?? '', position: chosen?.position ?? '' });
          }}
          options={[
            { value: '', label: words.anotherSpot },
            ...spots.map(({ key, about, position }) => ({
              value: key,
              label: [placeName(places, about), position].filter(Boolean).join(' · '),
            })),
          ]}
        />
      )}
      {(!ofSpot || reading) && (
        <>
          <Select
            label={words.place}
            value={draft.about}
            onChange={(about) => set('about', about)}
            options={placeOptions(places, true)}
          />
          <Field
            label={words.position}
            hint={words.positionHint}
            value={draft.position}
            onChange={(position) => set('position', position)}
            maxLength={500}
            optional
          />
        </>
      )}
      <Field
        label={words.day}
        kind="date"
        value={draft.day}
        onChange={(day) => set('day', day)}
        error={tried && !draft.day ? words.dayMissing : undefined}
        short
      />
      <Choice
        label={wayWords.surface}
        tiles="narrow"
        options={surfaces.map((value) => ({ value, label: wayWords.surfaces[value] }))}
        value={draft.surface}
        onChange={(surface) => set('surface', surface)}
      />
      {last && (
        <Choice
          label={wayWords.title}
          hint={wayWords.titleHint}
          tiles="full"
          options={[
            {
              value: 'same',
              label: wayWords.same(date(last.body.date)),
              detail: wayInWords({ ...last.body, surface: undefined }),
            },
            { value: 'other', label: wayWords.other },
          ]}
          value={draft.sameWay === undefined ? undefined : draft.sameWay ? 'same' : 'other'}
          onChange={(choice) => set('sameWay', choice === 'same')}
          error={tried && draft.sameWay === undefined ? wayWords.chooseWay : undefined}
        />
      )}
      {draft.sameWay === false && (
        <>
          {!last && <p className="soft">{wayWords.titleHint}</p>}
          <WayEntry way={draft.way} onChange={(changed) => set('way', changed)} tried={tried} />
          <Field
            label={wayWords.instrument}
            hint={wayWords.instrumentHint}
            value={draft.instrument}
            onChange={(instrument) => set('instrument', instrument)}
            maxLength={200}
            optional
          />
        </>
      )}
      {way && (
        <FitsNothing
          read={{ ...way, date: draft.day }}
          zone={zone}
          agreed={agreed}
          earlier={(ofSpot?.readings ?? []).filter(({ thing }) => thing !== reading?.thing)}
        />
      )}
      <PlacingsEntry
        text={draft.placings}
        onChange={(placings) => set('placings', placings)}
        illuminant={way?.illuminant}
        tried={tried}
      />
      <Field
        label={wayWords.calibration}
        hint={wayWords.calibrationHint}
        value={draft.calibration}
        onChange={(calibration) => set('calibration', calibration)}
        maxLength={300}
        optional
      />
      <Field
        label={words.note}
        kind="long"
        value={draft.note}
        onChange={(note) => set('note', note)}
        maxLength={4000}
        optional
      />
    </Sheet>
  );
}
