import { useState } from 'react';
import { setPlanned } from '../../actions';
import { type BodyOf, nameOf, type SculptureRecord, type Thing } from '../../engine/record';
import { beddings } from '../../engine/trade';
import { fieldText, w } from '../../words';
import { Choice, Field, Notice, PhotosHere, Sheet, SheetActs, Tick } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { maybeMeasure } from './typed';

const words = w.insertCare;
const methods = Object.keys(words.methods) as (keyof typeof words.methods)[];

interface InsertCareSheetProps {
  readonly record: SculptureRecord;
  readonly insert: Thing<'insert'>;
  readonly name: string;
  readonly care: BodyOf<'insertCare'> | undefined;
  readonly onClose: () => void;
}

/** What one insert bears and how it is kept from heat; a limit only with the name and the day of who set it. */
export function InsertCareSheet({ record, insert, name, care, onClose }: InsertCareSheetProps) {
  const desk = useDesk();
  const [text, setText] = useState(() => textOf(care));
  const [tried, setTried] = useState(false);
  const typed = useTyped(['care of an insert', insert.thing], { text: [text, setText] });
  const { run, refused, busy } = useDeed(typed);
  const set =
    <K extends keyof typeof text>(key: K) =>
    (value: (typeof text)[K]) =>
      setText({ ...text, [key]: value });
  const figures = {
    most: maybeMeasure('temperature', text.most),
    mostDifference: maybeMeasure('difference', text.mostDifference),
    mostPerMinute: maybeMeasure('difference', text.mostPerMinute),
  };
  const wrong = (figure: number | 'wrong' | undefined) =>
    tried && (figure === 'wrong' || (figure ?? 0) < 0) ? words.figureWrong : undefined;
  const save = () => {
    setTried(true);
    const { most, mostDifference, mostPerMinute } = figures;
    if (most === 'wrong' || mostDifference === 'wrong' || mostPerMinute === 'wrong') return;
    const said = (value: string) => value.trim() || undefined;
    const [role, given] = [said(text.limitBy), said(text.limitName)];
    const body: BodyOf<'insertCare'> = {
      ...{
        sculpture: record.sculpture.thing,
        insert: insert.thing,
        bedding: said(text.bedding),
        fixings: said(text.fixings),
      },
      ...{ condition: said(text.condition), photos: text.photos.length > 0 ? [...text.photos] : undefined },
      ...{ spare: text.spare || undefined, most, mostDifference, mostPerMinute },
      limitBy: role ? { role, ...(given ? { name: given } : {}) } : given ? { role: given } : undefined,
      ...{
        limitDate: said(text.limitDate),
        method: text.method,
        shield: said(text.shield),
        watcher: said(text.watcher),
      },
      ...{ takenOut: said(text.takenOut), putBack: said(text.putBack), note: said(text.note) },
    };
    void run(
      () => setPlanned(desk, 'insertCare', nameOf.insertCare(insert.thing), body),
      () => {
        say(words.saved);
        onClose();
      },
    );
  };
  const { zone } = insert.body;
  return (
    <Sheet
      open
      title={words.sheet(name)}
      onClose={onClose}
      actions={<SheetActs save={words.save} onSave={save} busy={busy} />}
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Choice
        label={words.bedding}
        options={beddings.map((row) => ({ value: row.id, label: row.name, detail: row.caution }))}
        value={text.bedding || undefined}
        onChange={set('bedding')}
      />
      <Field label={words.fixings} value={text.fixings} onChange={set('fixings')} maxLength={300} optional />
      <Field
        label={words.condition}
        kind="long"
        value={text.condition}
        onChange={set('condition')}
        maxLength={2000}
        optional
      />
      <PhotosHere
        desk={desk}
        sculpture={record.sculpture.thing}
        zone={zone}
        as="other"
        label={words.photos(name)}
        photos={text.photos}
        onChange={set('photos')}
      />
      <Tick label={words.spare} checked={text.spare} onChange={set('spare')} />
      <h3>{words.limit}</h3>
      <p className="soft">{words.limitWhat}</p>
      <Field
        label={words.most}
        takes="temperature"
        value={text.most}
        onChange={set('most')}
        error={wrong(figures.most)}
        optional
        short
      />
      <Field
        label={words.mostDifference}
        takes="difference"
        value={text.mostDifference}
        onChange={set('mostDifference')}
        error={wrong(figures.mostDifference)}
        optional
        short
      />
      <Field
        label={words.mostPerMinute}
        hint={words.mostPerMinuteHint}
        takes="difference"
        unit={words.perMinute}
        value={text.mostPerMinute}
        onChange={set('mostPerMinute')}
        error={wrong(figures.mostPerMinute)}
        optional
        short
      />
      <div className="hot-pair">
        <Field label={words.limitBy} value={text.limitBy} onChange={set('limitBy')} maxLength={100} optional />
        <Field label={words.limitName} value={text.limitName} onChange={set('limitName')} maxLength={200} optional />
        <Field label={words.limitDate} kind="date" value={text.limitDate} onChange={set('limitDate')} optional short />
      </div>
      <Choice
        label={words.method}
        options={methods.map((value) => ({ value, label: words.methods[value] }))}
        value={text.method}
        onChange={set('method')}
      />
      <Field label={words.shield} kind="long" value={text.shield} onChange={set('shield')} maxLength={1000} optional />
      <Field label={words.watcher} value={text.watcher} onChange={set('watcher')} maxLength={200} optional />
      <div className="hot-pair">
        <Field label={words.takenOut} kind="date" value={text.takenOut} onChange={set('takenOut')} optional short />
        <Field label={words.putBack} kind="date" value={text.putBack} onChange={set('putBack')} optional short />
      </div>
      <Field label={words.note} kind="long" value={text.note} onChange={set('note')} maxLength={4000} optional />
    </Sheet>
  );
}

const textOf = (care: BodyOf<'insertCare'> | undefined) => {
  return {
    bedding: care?.bedding ?? '',
    fixings: care?.fixings ?? '',
    condition: care?.condition ?? '',
    photos: (care?.photos ?? []) as readonly string[],
    spare: care?.spare ?? false,
    most: fieldText('temperature', care?.most),
    mostDifference: fieldText('difference', care?.mostDifference),
    mostPerMinute: fieldText('difference', care?.mostPerMinute),
    limitBy: care?.limitBy?.role ?? '',
    limitName: care?.limitBy?.name ?? '',
    limitDate: care?.limitDate ?? '',
    method: care?.method,
    shield: care?.shield ?? '',
    watcher: care?.watcher ?? '',
    takenOut: care?.takenOut ?? '',
    putBack: care?.putBack ?? '',
    note: care?.note ?? '',
  };
};
