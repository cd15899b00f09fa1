import { useState } from 'react';
import type { BodyOf, SculptureRecord, Thing } from '../../engine/record';
import { fieldText, numberTyped, w } from '../../words';
import { Choice, Field, PhotosHere, Tick } from '../parts';
import { useDesk, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';
import { maybeMeasure, maybeNumber, timeIn, typedTime } from './typed';

const words = w.layers;
const tools = Object.keys(words.tools) as (keyof typeof words.tools)[];

interface LayerSheetProps {
  readonly campaign: string;
  readonly record: SculptureRecord;
  readonly layers: readonly Thing<'layer'>[];
  readonly zone: string;
  /** Undefined: a new one. */
  readonly layer: Thing<'layer'> | undefined;
  readonly order: number;
  readonly onClose: () => void;
}

/** One layer: what, with what, how hot, how often. A new one begins as the last layer that was laid anywhere. */
export function LayerSheet({ campaign, record, layers, zone, layer, order, onClose }: LayerSheetProps) {
  const desk = useDesk();
  const now = desk.now();
  const last = layers.at(-1)?.body;
  const [text, setText] = useState(() => {
    const from = layer?.body;
    return {
      solution: from?.solution ?? '',
      strength: from?.strength ?? '',
      tool: from?.tool ?? last?.tool ?? '',
      surface: fieldText('temperature', from?.surface),
      passes: from?.passes === undefined ? '' : numberTyped(from.passes),
      rinsed: from?.rinsed ?? false,
      date: from?.date ?? desk.today(),
      time: from ? (from.time ?? '') : timeIn(now),
      air: from ? (from.air ?? '') : last?.date === desk.today() ? (last.air ?? '') : '',
      by: from?.by ?? last?.by ?? '',
      photos: from?.photos ?? ([] as readonly string[]),
      note: from?.note ?? '',
    };
  });
  const [tried, setTried] = useState(false);
  const typed = useTyped(['layer', layer?.thing, campaign, zone], { text: [text, setText] });
  const set =
    <K extends keyof typeof text>(key: K) =>
    (value: (typeof text)[K]) =>
      setText({ ...text, [key]: value });
  const surface = maybeMeasure('temperature', text.surface);
  const passes = maybeNumber(text.passes);
  const time = text.time.trim() === '' ? undefined : (typedTime(text.time) ?? 'wrong');
  const surfaceWrong = surface === 'wrong' || (surface !== undefined && (surface < -50 || surface > 1200));
  const passesWrong = passes === 'wrong' || (passes !== undefined && (passes < 1 || !Number.isInteger(passes)));
  const letter = record.zones.find(({ thing }) => thing === zone)?.body.letter ?? '';
  const usedBefore = [...new Set(layers.map(({ body }) => body.solution))].slice(-6);
  const body = (): BodyOf<'layer'> | undefined => {
    setTried(true);
    if (!text.solution.trim() || !text.date || surfaceWrong || passesWrong || time === 'wrong') return;
    const said = (value: string) => value.trim() || undefined;
    return {
      ...{ sculpture: record.sculpture.thing, campaign, zone, order },
      ...{ solution: text.solution.trim(), strength: said(text.strength), tool: said(text.tool), surface, passes },
      ...{ rinsed: text.rinsed || undefined, date: text.date, time, air: said(text.air), by: said(text.by) },
      ...{ photos: text.photos.length > 0 ? [...text.photos] : undefined, note: said(text.note) },
    };
  };
  return (
    <PlannedSheet
      kind="layer"
      thing={layer?.thing}
      title={words.sheet(letter, order)}
      words={words}
      body={body}
      fixed={['sculpture', 'campaign', 'zone', 'order']}
      typed={typed}
      onClose={onClose}
    >
      {usedBefore.length > 0 && !layer && (
        <Choice
          label={words.earlier}
          options={usedBefore.map((value) => ({ value, label: value }))}
          value={usedBefore.includes(text.solution) ? text.solution : undefined}
          onChange={set('solution')}
        />
      )}
      <Field
        label={words.solution}
        hint={words.solutionHint}
        value={text.solution}
        onChange={set('solution')}
        maxLength={300}
        error={tried && !text.solution.trim() ? words.solutionMissing : undefined}
      />
      <Field label={words.strength} value={text.strength} onChange={set('strength')} maxLength={100} optional short />
      <Choice
        label={words.tool}
        tiles="narrow"
        options={tools.map((value) => ({ value, label: words.tools[value] }))}
        value={tools.find((tool) => tool === text.tool)}
        onChange={set('tool')}
      />
      <Field
        label={words.surface}
        takes="temperature"
        value={text.surface}
        onChange={set('surface')}
        error={tried && surfaceWrong ? words.surfaceWrong : undefined}
        optional
        short
      />
      <Field
        label={words.passes}
        kind="number"
        value={text.passes}
        onChange={set('passes')}
        error={tried && passesWrong ? words.passesWrong : undefined}
        optional
        short
      />
      <Tick label={words.rinsed} checked={text.rinsed} onChange={set('rinsed')} />
      <Field
        label={words.day}
        kind="date"
        value={text.date}
        onChange={set('date')}
        error={tried && !text.date ? words.dayMissing : undefined}
        short
      />
      <Field
        label={words.time}
        value={text.time}
        onChange={set('time')}
        maxLength={12}
        error={tried && time === 'wrong' ? words.timeWrong : undefined}
        optional
        short
      />
      <Field label={words.air} value={text.air} onChange={set('air')} maxLength={300} optional />
      <Field label={words.by} value={text.by} onChange={set('by')} maxLength={200} optional />
      <PhotosHere
        desk={desk}
        sculpture={record.sculpture.thing}
        zone={zone}
        as="zone"
        label={words.photosOf(letter, order)}
        photos={text.photos}
        onChange={set('photos')}
      />
      <Field label={words.note} kind="long" value={text.note} onChange={set('note')} maxLength={4000} optional />
    </PlannedSheet>
  );
}
