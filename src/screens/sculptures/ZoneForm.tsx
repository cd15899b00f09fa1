import type { ReactNode } from 'react';
import { type Exposure, exposures, reaches, substrates } from '../../engine/trade';
import { w } from '../../words';
import { Choice, Choices, Field, Notice } from '../parts';
import { AreaEntry } from './AreaEntry';
import type { ZoneText } from './zoneText';
import './zones.css';

const words = w.sculptures.zone;
/** In the order of the numbers: an object would put whole numbers first. */
const weights = (['0.5', '1', '1.5', '2'] as const).map((value) => ({
  value: value as string,
  label: words.weights[value],
}));
const ofSort = (sort: Exposure['sort']) =>
  exposures.filter((row) => row.sort === sort).map(({ id, name }) => ({ value: id, label: name }));
const asOptions = (rows: readonly { readonly id: string; readonly name: string }[]) =>
  rows.map(({ id, name }) => ({ value: id, label: name }));

interface ZoneFormProps {
  readonly text: ZoneText;
  readonly onChange: (text: ZoneText) => void;
  readonly tried: boolean;
  readonly refused: string | undefined;
  readonly onSubmit: () => void;
  /** Above the fields: what an edit does. */
  readonly before?: ReactNode;
  readonly children: ReactNode;
}

/** All that is said of a zone: name, setting, surface, reach, area. */
export function ZoneForm({ text, onChange, tried, refused, onSubmit, before, children }: ZoneFormProps) {
  const set =
    <K extends keyof ZoneText>(key: K) =>
    (value: ZoneText[K]) =>
      onChange({ ...text, [key]: value });
  const chosen = (sort: Exposure['sort']) => {
    const options = ofSort(sort);
    const here = new Set(options.map(({ value }) => value));
    return {
      options,
      values: text.exposure.filter((code) => here.has(code)),
      onChange: (codes: readonly string[]) =>
        onChange({ ...text, exposure: [...text.exposure.filter((code) => !here.has(code)), ...codes] }),
    };
  };
  return (
    <form
      className="stack roomy"
      noValidate
      onSubmit={(e) => {
        e.preventDefault();
        onSubmit();
      }}
    >
      {before}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.name}
        hint={words.nameHint}
        value={text.name}
        onChange={set('name')}
        maxLength={200}
        error={tried && !text.name.trim() ? words.nameMissing : undefined}
      />
      <Field
        label={words.letter}
        hint={words.letterHint}
        value={text.letter}
        onChange={set('letter')}
        maxLength={4}
        short
        optional
      />
      <AreaEntry draft={text.area} onChange={set('area')} tried={tried} />
      <Choices label={words.lie} {...chosen('lie')} />
      <Choices label={words.reachedBy} {...chosen('reached by')} />
      <Choices label={words.cause} {...chosen('cause')} />
      <Choice
        label={words.substrate}
        options={asOptions(substrates)}
        value={text.substrate}
        onChange={set('substrate')}
      />
      <Choice label={words.reach} options={asOptions(reaches)} value={text.reach} onChange={set('reach')} />
      <Choice
        label={words.weight}
        hint={words.weightHint}
        options={weights}
        value={text.weight}
        onChange={set('weight')}
        tiles="narrow"
      />
      <Field label={words.note} kind="long" value={text.note} onChange={set('note')} maxLength={4000} optional />
      {children}
    </form>
  );
}
