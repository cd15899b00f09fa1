import { useState } from 'react';
import { editTreatment, type Planned, plannedOfCollection, recordTreatment, removeTreatment } from '../../actions';
import { endOf, type SculptureRecord, type Thing } from '../../engine/record';
import { treatmentOf, treatments } from '../../engine/trade';
import { w, zoneOptions } from '../../words';
import { Button, Choice, Choices, Field, Notice, Sheet, Tick } from '../parts';
import { Fold } from '../parts/Fold';
import { say, useDeed, useDesk, useMoney, useQuestion, useTyped } from '../shell';
import { AboutEntry } from './AboutEntry';
import { type EntryFault, type EntryText, entryFields, entryTextOf, faultsIn, newEntry } from './entryText';
import { lastProduct } from './lines';
import { MoreOfEntry } from './MoreOfEntry';
import { ProductEntry } from './ProductEntry';

const words = w.logbook;
const coats = ['1', '2', '3', '4'];
const none: ReadonlySet<EntryFault> = new Set();

interface EntrySheetProps {
  readonly record: SculptureRecord;
  readonly planned: Planned;
  /** Undefined: a new one. */
  readonly entry: Thing<'treatment'> | undefined;
  readonly onClose: () => void;
}

/** Something that was done: what, when, where, with what; then who, in what air, at what cost. */
export function EntrySheet({ record, planned, entry, onClose }: EntrySheetProps) {
  const desk = useDesk();
  const kept = useQuestion(plannedOfCollection(desk));
  const last = lastProduct(record, entry?.thing, kept?.product ?? []);
  const [text, setText] = useState<EntryText>(() =>
    entry ? entryTextOf(entry.body, last, desk.today()) : newEntry(desk.today()),
  );
  const [tried, setTried] = useState(false);
  const typed = useTyped(['logbook', entry?.thing, record.sculpture.thing], { text: [text, setText] });
  const money = useMoney();
  const currency = entry?.body.cost?.currency ?? money.currency;
  const { run, refused, busy } = useDeed(typed);
  const set =
    <K extends keyof EntryText>(key: K) =>
    (value: EntryText[K]) =>
      setText({ ...text, [key]: value });
  const row = treatmentOf(text.type);
  const living = record.zones.filter((zone) => endOf(zone) === undefined || text.zones.includes(zone.thing));
  const tins = (kept?.product ?? []).filter(({ thing, body }) => body.ended === undefined || thing === text.stock);
  const others = { ...record, treatments: record.treatments.filter(({ thing }) => thing !== entry?.thing) };
  const faults = faultsIn(text, currency);
  const shown = tried ? faults : none;
  const done = (said: string) => () => {
    say(said);
    onClose();
  };
  const save = () => {
    setTried(true);
    if (faults.size > 0) return;
    const fields = entryFields(text, last, tins.find(({ thing }) => thing === text.stock)?.body, currency);
    return run(
      async () => {
        const settled = fields.cost ? await money.keepCurrency() : undefined;
        if (settled && !settled.ok) return settled;
        return entry ? editTreatment(desk, entry.thing, fields) : recordTreatment(desk, record.sculpture.thing, fields);
      },
      done(entry ? words.edited : words.saved(row?.name ?? text.type)),
    );
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
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Choice
        label={words.what}
        options={treatments.map(({ id, name }) => ({ value: id, label: name }))}
        value={text.type}
        onChange={set('type')}
      />
      <AboutEntry type={text.type} record={record} entry={entry?.thing} />
      {text.rough ? (
        <Field
          label={words.roughDay}
          hint={words.roughHint}
          value={text.roughly}
          onChange={set('roughly')}
          maxLength={60}
          error={shown.has('day') ? words.dayMissing : undefined}
        />
      ) : (
        <Field
          label={words.day}
          kind="date"
          value={text.day}
          onChange={set('day')}
          short
          error={shown.has('day') ? words.dayMissing : undefined}
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
          options={zoneOptions(living)}
          values={text.zones}
          onChange={set('zones')}
          error={shown.has('zones') ? words.zonesMissing : undefined}
        />
      )}
      <ProductEntry
        text={text}
        last={last}
        tins={tins}
        record={others}
        usedWrong={shown.has('used')}
        onChange={setText}
      />
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
      <Fold show={words.more} hide={words.moreHide} alsoOnPaper>
        <MoreOfEntry
          sculpture={record.sculpture.thing}
          text={text}
          onChange={setText}
          readings={[...planned.weather].reverse()}
          campaigns={planned.campaign}
          currency={currency}
          onCurrency={entry?.body.cost ? undefined : money.onCurrency}
          faults={shown}
          tried={tried}
        />
      </Fold>
    </Sheet>
  );
}
