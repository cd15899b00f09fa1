import { useState } from 'react';
import { type BodyOf, type SculptureRecord, type Thing, zonesAt } from '../../engine/record';
import { causeOf, causes } from '../../engine/trade';
import { w, zoneOptions } from '../../words';
import { Choice, Choices, Field } from '../parts';
import { Select } from '../parts/Select';
import { useDesk, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';

const words = w.campaign.causes;

type State = BodyOf<'cause'>['state'];
const states = Object.keys(words.states) as State[];

/** What the sheet opens with: a cause that is there, or what is worth looking for. */
export interface CauseStart {
  readonly cause?: Thing<'cause'>;
  readonly sort?: string;
  readonly zones?: readonly string[];
}

interface CauseSheetProps {
  readonly record: SculptureRecord;
  readonly start: CauseStart;
  readonly onClose: () => void;
}

/** One cause: where it reaches, how it stands, what shows it. */
export function CauseSheet({ record, start, onClose }: CauseSheetProps) {
  const desk = useDesk();
  const { cause } = start;
  const from = cause?.body;
  const [sort, setSort] = useState(from?.sort ?? start.sort ?? causes[0]?.id ?? '');
  const [zones, setZones] = useState<readonly string[]>(from?.zones ?? start.zones ?? []);
  const [state, setState] = useState<State>(from?.state ?? 'open');
  const [found, setFound] = useState<string>(from?.found ?? desk.today());
  const [changed, setChanged] = useState<string>(from?.changed ?? '');
  const [seen, setSeen] = useState(from?.seen ?? '');
  const [why, setWhy] = useState(from?.why ?? '');
  const typed = useTyped(['cause', cause?.thing, record.sculpture.thing, start.sort], {
    sort: [sort, setSort],
    zones: [zones, setZones],
    state: [state, setState],
    found: [found, setFound],
    changed: [changed, setChanged],
    seen: [seen, setSeen],
    why: [why, setWhy],
  });
  const row = causeOf(sort);
  const body = (): BodyOf<'cause'> => ({
    sculpture: record.sculpture.thing,
    sort,
    zones: [...zones],
    state,
    found: found || desk.today(),
    changed: changed || undefined,
    seen: seen.trim() || undefined,
    why: why.trim() || undefined,
  });
  return (
    <PlannedSheet
      kind="cause"
      thing={cause?.thing}
      title={cause ? words.edit : words.add}
      words={words}
      body={body}
      typed={typed}
      onClose={onClose}
    >
      <Select
        label={words.sort}
        value={sort}
        onChange={setSort}
        options={causes.map(({ id, name }) => ({ value: id, label: name }))}
      />
      {row && (
        <p className="soft">
          {row.signs} {row.remedy}
        </p>
      )}
      <Choices
        label={words.where}
        hint={words.whereHint}
        options={zoneOptions(zonesAt(record, desk.today()))}
        values={zones}
        onChange={setZones}
      />
      <Choice
        label={words.state}
        options={states.map((value) => ({ value, label: words.states[value] }))}
        value={state}
        onChange={(value) => {
          setState(value);
          // Most often it is said on the day it was done.
          if (value !== 'open' && changed === '') setChanged(desk.today());
        }}
      />
      <div className="fields">
        <Field label={words.found} kind="date" value={found} onChange={setFound} short />
        {state !== 'open' && (
          <Field
            label={words.changed}
            kind="date"
            value={changed}
            onChange={setChanged}
            short
            optional={state !== 'removed'}
          />
        )}
      </div>
      <Field label={words.seen} kind="long" value={seen} onChange={setSeen} maxLength={1000} optional />
      {state !== 'open' && (
        <Field
          label={words.why}
          kind="long"
          value={why}
          onChange={setWhy}
          maxLength={1000}
          optional={state === 'removed' || state === 'being removed'}
        />
      )}
    </PlannedSheet>
  );
}
