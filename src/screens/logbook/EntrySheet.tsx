import { useState } from 'react';
import { editTreatment, recordTreatment, removeTreatment } from '../../actions';
import { endOf, type SculptureRecord, type Thing } from '../../engine/record';
import { type CautionPlace, cautionsAt, treatmentOf, treatments } from '../../engine/trade';
import { w } from '../../words';
import { Button, Choice, Choices, Field, Notice, Sheet, Tick } from '../parts';
import { say, useDeed, useDesk } from '../shell';
import { type EntryText, entryFields, entryTextOf, newEntry } from './entryText';
import { lastProduct } from './lines';
import { ProductEntry } from './ProductEntry';

const words = w.logbook;
const coats = ['1', '2', '3', '4'];

interface EntrySheetProps {
  readonly record: SculptureRecord;
  /** Undefined: a new one. */
  readonly entry: Thing<'treatment'> | undefined;
  readonly onClose: () => void;
}

/** Something that was done: what, when, where, with what. */
export function EntrySheet({ record, entry, onClose }: EntrySheetProps) {
  const desk = useDesk();
  const last = lastProduct(record, entry?.thing);
  const [text, setText] = useState<EntryText>(() =>
    entry ? entryTextOf(entry.body, last?.product, desk.today()) : newEntry(desk.today()),
  );
  const [tried, setTried] = useState(false);
  const { run, refused, busy } = useDeed();
  const set =
    <K extends keyof EntryText>(key: K) =>
    (value: EntryText[K]) =>
      setText({ ...text, [key]: value });
  const row = treatmentOf(text.type);
  const living = record.zones.filter((zone) => endOf(zone) === undefined || text.zones.includes(zone.thing));
  const done = (said: string) => () => {
    say(said);
    onClose();
  };
  const save = () => {
    setTried(true);
    const fields = entryFields(text, last?.product);
    if (!fields) return;
    return entry
      ? run(() => editTreatment(desk, entry.thing, fields), done(words.edited))
      : run(() => recordTreatment(desk, record.sculpture.thing, fields), done(words.saved(row?.name ?? text.type)));
  };
  return (
    <Sheet
      open
      title={entry ? words.edit : words.add}
      onClose={onClose}
      actions={
        <>
          {entry && (
            <Button
              kind="danger"
              disabled={busy}
              onClick={() => run(() => removeTreatment(desk, entry.thing), done(words.removed))}
            >
              {words.remove}
            </Button>
          )}
          <Button kind="main" size="round" onClick={save} disabled={busy}>
            {entry ? words.saveEdit : words.save}
          </Button>
        </>
      }
    >
      {refused && <Notice kind="problem" title={refused} />}
      <Choice
        label={words.what}
        options={treatments.map(({ id, name }) => ({ value: id, label: name }))}
        value={text.type}
        onChange={set('type')}
      />
      <About type={text.type} />
      {text.rough ? (
        <Field
          label={words.roughDay}
          hint={words.roughHint}
          value={text.roughly}
          onChange={set('roughly')}
          maxLength={60}
          error={tried && !text.roughly.trim() ? words.dayMissing : undefined}
        />
      ) : (
        <Field
          label={words.day}
          kind="date"
          value={text.day}
          onChange={set('day')}
          short
          error={tried && !text.day ? words.dayMissing : undefined}
        />
      )}
      <Tick label={words.roughly} checked={text.rough} onChange={set('rough')} />
      <Choice
        label={words.where}
        options={[
          { value: 'whole', label: words.whole },
          { value: 'some', label: words.someZones },
        ]}
        value={text.whole ? 'whole' : 'some'}
        onChange={(where) => setText({ ...text, whole: where === 'whole' })}
      />
      {!text.whole && (
        <Choices
          label={words.zones}
          options={living.map(({ thing, body }) => ({
            value: thing,
            label: w.sculptures.zone.edit(body.letter, body.name),
          }))}
          values={text.zones}
          onChange={set('zones')}
          error={tried && text.zones.length === 0 ? words.zonesMissing : undefined}
        />
      )}
      <ProductEntry text={text} last={last} onChange={setText} />
      {row?.coats && (
        <Choice
          label={words.coats}
          tiles="narrow"
          options={coats.map((value) => ({ value, label: value }))}
          value={text.coats}
          onChange={set('coats')}
        />
      )}
      <Field label={words.by} hint={words.byHint} value={text.by} onChange={set('by')} maxLength={300} optional />
      <Field label={words.note} kind="long" value={text.note} onChange={set('note')} maxLength={4000} optional />
    </Sheet>
  );
}

const placesOf = (type: string): readonly CautionPlace[] => {
  const row = treatmentOf(type);
  if (row?.hot) return ['hot work'];
  if (row?.coats) return ['wax'];
  return type === 'wash' ? ['wash'] : [];
};

/** What goes with this sort of work: whom to ask, what it does to the series, what to take care of. */
function About({ type }: { readonly type: string }) {
  const row = treatmentOf(type);
  const cautions = placesOf(type).flatMap((place) => cautionsAt(place));
  return (
    <>
      {row?.askConservator && (
        <Notice kind="stop" title={words.ask}>
          <p>{words.askWhat}</p>
        </Notice>
      )}
      {row?.breaksSeries && (
        <Notice title={words.breaks}>
          <p>{words.breaksWhat}</p>
        </Notice>
      )}
      {cautions.length > 0 && (
        <Notice kind="caution" title={words.take}>
          <ul>
            {cautions.map(({ id, text }) => (
              <li key={id}>{text}</li>
            ))}
          </ul>
        </Notice>
      )}
    </>
  );
}
