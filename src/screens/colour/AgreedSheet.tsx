import { useState } from 'react';
import { type AgreedColourFields, editAgreedColour, removeAgreedColour, setAgreedColour } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Field, Notice, Sheet, SheetActs } from '../parts';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { type PlacesOfWork, placeOptions } from './placeNames';
import { Swatch } from './Swatch';
import { placingsText, typedPlacings } from './typedPlacings';
import { WayEntry } from './WayEntry';
import { noWay, type WayText, wayOf, wayTextOf } from './wayOfReading';

const words = w.colour.agreedSheet;

/** What a new agreed colour starts from: a reading it was taken from, its day and place. */
export type AgreedStart = Pick<AgreedColourFields, 'value' | 'illuminant' | 'observer' | 'geometry' | 'aperture'> & {
  readonly date: string;
  readonly zone: string | undefined;
};

interface AgreedSheetProps {
  readonly sculpture: string;
  readonly places: PlacesOfWork;
  /** Undefined: a new one. */
  readonly agreed?: Thing<'agreedColour'> | undefined;
  readonly start?: AgreedStart | undefined;
  readonly onClose: () => void;
}

/** A colour the surface is to keep: its name, who agreed, its figures and how they were read. */
export function AgreedSheet({ sculpture, places, agreed, start, onClose }: AgreedSheetProps) {
  const desk = useDesk();
  const from = agreed?.body ?? start;
  const [name, setName] = useState(agreed?.body.name ?? '');
  const [by, setBy] = useState(agreed?.body.by ?? '');
  const [day, setDay] = useState(from?.date ?? desk.today());
  const [zone, setZone] = useState(from?.zone ?? '');
  const [value, setValue] = useState(from ? placingsText([from.value]) : '');
  const [way, setWay] = useState<WayText>(from ? wayTextOf(from) : noWay);
  const [kept, setKept] = useState(agreed?.body.kept ?? '');
  const [note, setNote] = useState(agreed?.body.note ?? '');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['agreed colour', agreed?.thing, sculpture], {
    name: [name, setName],
    by: [by, setBy],
    day: [day, setDay],
    zone: [zone, setZone],
    value: [value, setValue],
    way: [way, setWay],
    kept: [kept, setKept],
    note: [note, setNote],
  });
  const { run, refused, busy } = useDeed(typed);
  const { values, wrong } = typedPlacings(value);
  const figures = !wrong && values.length === 1 ? values[0] : undefined;
  const done = (said: string) => () => {
    say(said);
    onClose();
  };
  const save = () => {
    setTried(true);
    const read = wayOf(way);
    if (!name.trim() || !by.trim() || !day || !figures || !read) return;
    const { illuminant, observer, geometry, aperture } = read;
    const fields: AgreedColourFields = {
      ...{
        name: name.trim(),
        by: by.trim(),
        date: day,
        value: { ...figures },
        illuminant,
        observer,
        geometry,
        aperture,
      },
      zone: zone || undefined,
      kept: kept.trim() || undefined,
      note: note.trim() || undefined,
    };
    return agreed
      ? run(() => editAgreedColour(desk, agreed.thing, fields), done(words.edited))
      : run(() => setAgreedColour(desk, sculpture, fields), done(words.saved));
  };
  return (
    <Sheet
      open
      title={agreed ? words.edit : words.add}
      onClose={onClose}
      actions={
        <SheetActs
          save={words.save}
          onSave={save}
          remove={
            agreed && {
              word: words.remove,
              go: () => void run(() => removeAgreedColour(desk, agreed.thing), done(words.removed)),
            }
          }
          busy={busy}
        />
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.name}
        hint={words.nameHint}
        value={name}
        onChange={setName}
        maxLength={200}
        error={tried && !name.trim() ? words.nameMissing : undefined}
      />
      <Field
        label={words.by}
        hint={words.byHint}
        value={by}
        onChange={setBy}
        maxLength={200}
        error={tried && !by.trim() ? words.byMissing : undefined}
      />
      <Field
        label={words.day}
        kind="date"
        value={day}
        onChange={setDay}
        error={tried && !day ? w.colour.sheet.dayMissing : undefined}
        short
      />
      <Select label={words.zone} value={zone} onChange={setZone} options={placeOptions(places, false)} />
      <Field
        label={words.value}
        hint={words.valueHint}
        value={value}
        onChange={setValue}
        maxLength={100}
        error={tried && !figures ? words.valueWrong : undefined}
      />
      {figures && <Swatch value={figures} illuminant={way.illuminant ?? 'D65'} what={name || words.name} />}
      <p className="soft">{w.colour.way.titleHint}</p>
      <WayEntry way={way} onChange={setWay} tried={tried} />
      <Field label={words.kept} value={kept} onChange={setKept} maxLength={300} optional />
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </Sheet>
  );
}
