import { useState } from 'react';
import { recordTreatment } from '../../actions';
import { otherProduct } from '../../engine/care';
import { endOf, type SculptureRecord, type Thing } from '../../engine/record';
import { sortOfProduct, treatmentOf } from '../../engine/trade';
import { date, list, w, zoneOptions } from '../../words';
import { Button, Choice, Choices, Field, Notice, Sheet } from '../parts';
import { HoursEntry } from '../parts/HoursEntry';
import { say, useDeed, useDesk, useTyped } from '../shell';
import { draftOfDay, fieldsOfDay, kindsOfDay, type RecordDraft, wrongWith } from './recordDraft';

const words = w.careDay;
const coats = ['1', '2', '3'];

interface RecordSheetProps {
  readonly record: SculptureRecord;
  readonly products: readonly Thing<'product'>[];
  /** The reading of the day it goes with. */
  readonly reading: Thing<'weather'> | undefined;
  readonly day: string;
  readonly tin: string;
  readonly kind: 'wash' | 'wax';
  readonly onClose: () => void;
  /** With what was written down, in words. */
  readonly onWritten: (what: string) => void;
}

/** What was done today, as last time until said otherwise: open, look, write down. */
export function RecordSheet({ record, products, reading, day, tin, kind, onClose, onWritten }: RecordSheetProps) {
  const desk = useDesk();
  const [draft, setDraft] = useState<RecordDraft>(() => draftOfDay(record, kind, tin));
  const [tried, setTried] = useState(false);
  const typed = useTyped(['care day', undefined, record.sculpture.thing, kind], { draft: [draft, setDraft] });
  const { run, refused, busy } = useDeed(typed);
  const set =
    <K extends keyof RecordDraft>(key: K) =>
    (value: RecordDraft[K]) =>
      setDraft({ ...draft, [key]: value });
  const coating = treatmentOf(draft.type)?.coats ?? false;
  const tins = products.filter(
    ({ body }) => body.ended === undefined && (sortOfProduct(body.sort)?.coats ?? true) === coating,
  );
  const product = tins.find(({ thing }) => thing === draft.tin);
  const living = record.zones.filter((zone) => endOf(zone) === undefined);
  const other = coating ? otherProduct(record, draft.whole ? [] : draft.zones, product?.body.name ?? '') : [];
  const wrong = wrongWith(draft);
  const name = words.recordKinds[draft.type];
  const save = () => {
    setTried(true);
    if (wrong.size > 0) return;
    const fields = fieldsOfDay(draft, day, product, reading, (why) => `${words.otherProduct}: ${why}`);
    return run(
      () => recordTreatment(desk, record.sculpture.thing, fields),
      () => {
        say(words.written(name));
        onWritten(name);
        onClose();
      },
    );
  };
  return (
    <Sheet
      open
      title={words.recordTitle}
      onClose={onClose}
      actions={
        <Button kind="main" size="big" disabled={busy} onClick={save}>
          {words.write}
        </Button>
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <p>{reading ? words.onReading(reading.body.time, words.says[reading.body.said]) : words.noReading}</p>
      <Choice
        label={words.recordWhat}
        size="round"
        tiles="narrow"
        options={kindsOfDay.map((value) => ({ value, label: words.recordKinds[value] }))}
        value={draft.type}
        onChange={(type) => setDraft({ ...draftOfDay(record, type, tin), people: draft.people, left: draft.left })}
      />
      <Choice
        label={w.logbook.where}
        size="round"
        tiles="narrow"
        options={[
          { value: 'whole', label: w.logbook.whole },
          { value: 'some', label: w.logbook.someZones },
        ]}
        value={draft.whole ? 'whole' : 'some'}
        onChange={(where) => setDraft({ ...draft, whole: where === 'whole' })}
      />
      {!draft.whole && (
        <Choices
          label={w.logbook.zones}
          size="round"
          options={zoneOptions(living)}
          values={draft.zones}
          onChange={set('zones')}
          error={tried && wrong.has('zones') ? w.logbook.zonesMissing : undefined}
        />
      )}
      {tins.length > 0 && (
        <Choice
          label={words.product}
          size="round"
          options={[
            ...tins.map(({ thing, body }) => ({ value: thing, label: body.name, detail: body.batch })),
            { value: '', label: words.productNone },
          ]}
          value={draft.tin}
          onChange={set('tin')}
        />
      )}
      {other.length > 0 && (
        <Notice kind="caution" title={words.otherProduct}>
          {grouped(other).map(({ zones, product: was, date: on }) => (
            <p key={`${was} ${on}`}>{words.otherProductOn(zones, was, date(on))}</p>
          ))}
          <p>{words.otherProductWhat}</p>
          <Field label={words.otherWhy} value={draft.why} onChange={set('why')} maxLength={500} optional />
        </Notice>
      )}
      {coating && (
        <Choice
          label={words.coats}
          size="round"
          tiles="narrow"
          options={coats.map((value) => ({ value, label: value }))}
          value={draft.coats}
          onChange={set('coats')}
        />
      )}
      {product && (
        <Field
          label={words.used}
          kind="number"
          short
          optional
          value={draft.used}
          onChange={set('used')}
          unit={product.body.unit && w.products.units[product.body.unit]}
          maxLength={10}
          error={tried && wrong.has('used') ? words.usedWrong : undefined}
        />
      )}
      <HoursEntry
        label={words.hours}
        people={draft.people}
        onChange={set('people')}
        tried={tried}
        wrong={wrong.has('hours')}
      />
      <Field label={words.notReached} value={draft.left} onChange={set('left')} maxLength={1000} optional />
    </Sheet>
  );
}

/** Zones whose last product and day are the same, together. */
const grouped = (rows: ReturnType<typeof otherProduct>) => {
  const groups = new Map<string, { letters: string[]; product: string; date: string }>();
  for (const { zone, product, date: on } of rows) {
    const group = groups.get(`${product} ${on}`) ?? { letters: [], product, date: on };
    group.letters.push(zone.body.letter);
    groups.set(`${product} ${on}`, group);
  }
  return [...groups.values()].map(({ letters, ...rest }) => ({
    ...rest,
    zones: letters.length === 1 ? w.logbook.zoneOf(list(letters)) : w.logbook.zonesOf(list(letters)),
  }));
};
