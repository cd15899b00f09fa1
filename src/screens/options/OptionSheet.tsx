import { useRef, useState } from 'react';
import type { ZoneHolds } from '../../engine/hold';
import { goodMonthsOf, irreversibleTimes, type Situation, speaking } from '../../engine/options';
import { endOf, type Reason, type SculptureRecord, type Thing } from '../../engine/record';
import { optionSortOf, optionSorts } from '../../engine/trade';
import { type NameOfThing, w, zoneOptions } from '../../words';
import { AddIcon, Button, Choice, Choices, Field, Notice } from '../parts';
import { Reasons } from '../parts/Reasons';
import { useMoney, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';
import { CostLine } from './CostLine';
import { type CostText, newCost, readCost } from './costText';
import { GoodMonthsEntry } from './GoodMonthsEntry';
import { type OptionFaults, type OptionText, optionText, readOption, withSort } from './optionText';

const words = w.options.sheet;
const noFaults: OptionFaults = { costs: {} };

interface OptionSheetProps {
  readonly sculpture: string;
  /** Undefined: a new one. */
  readonly option: Thing<'option'> | undefined;
  readonly known: {
    readonly record: SculptureRecord;
    readonly situation: Situation | undefined;
    readonly works: readonly (readonly ZoneHolds[])[];
    readonly signs: readonly Reason[];
    readonly names: NameOfThing;
  };
  readonly onClose: () => void;
}

/** One way to go on: which, where, its costs, the good months it gives, and what cannot be taken back. */
export function OptionSheet({ sculpture, option, known, onClose }: OptionSheetProps) {
  const { rules, currency, onCurrency, keepCurrency } = useMoney();
  const [text, setText] = useState<OptionText>(() => optionText(option?.body));
  const [faults, setFaults] = useState<OptionFaults>(noFaults);
  const typed = useTyped(['option', option?.thing, sculpture], { text: [text, setText] });
  const nextKey = useRef(text.costs.length);
  const { record, situation, works, signs, names } = known;
  const set =
    <K extends keyof OptionText>(key: K) =>
    (value: OptionText[K]) =>
      setText({ ...text, [key]: value });
  const told = situation && text.sort ? goodMonthsOf(text.sort, situation, works) : undefined;
  const living = record.zones.filter((zone) => endOf(zone) === undefined || text.zones.includes(zone.thing));
  const body = () => {
    const read = readOption(text, sculpture, currency, told?.months ?? null);
    setFaults('faults' in read ? read.faults : noFaults);
    return 'body' in read ? read.body : undefined;
  };
  const setCost = (cost: CostText) =>
    setText({ ...text, costs: text.costs.map((one) => (one.key === cost.key ? cost : one)) });
  return (
    <PlannedSheet
      kind="option"
      thing={option?.thing}
      title={option ? words.edit : words.add}
      words={{ ...words, saved: words.kept(text.title.trim()) }}
      body={body}
      before={text.costs.length > 0 ? keepCurrency : undefined}
      typed={typed}
      onClose={onClose}
    >
      <Choice
        label={words.sort}
        tiles="full"
        options={optionSorts.map(({ id, name }) => ({ value: id, label: name }))}
        value={text.sort || undefined}
        onChange={(sort) => setText(withSort(text, sort))}
      />
      {text.sort && (
        <>
          <Said sort={text.sort} signs={signs} names={names} />
          <Field label={words.name} value={text.title} onChange={set('title')} maxLength={200} error={faults.title} />
          <Choice
            label={words.where}
            tiles="narrow"
            options={[
              { value: 'whole', label: words.wholeWork },
              { value: 'some', label: words.some },
            ]}
            value={text.whole ? 'whole' : 'some'}
            onChange={(where) => setText({ ...text, whole: where === 'whole' })}
          />
          {!text.whole && (
            <Choices
              label={words.some}
              labelUnseen
              options={zoneOptions(living)}
              values={text.zones}
              onChange={set('zones')}
              error={faults.zones}
            />
          )}
          <div className="stack">
            <h3>{words.costs}</h3>
            <p className="hint">{words.costsHint}</p>
            {text.costs.map((cost, i) => (
              <CostLine
                key={cost.key}
                text={cost}
                fault={faults.costs[cost.key]}
                rules={rules}
                currency={currency}
                onCurrency={i === 0 ? onCurrency : undefined}
                onChange={setCost}
                onRemove={() => setText({ ...text, costs: text.costs.filter(({ key }) => key !== cost.key) })}
              />
            ))}
            <div className="row">
              <Button
                icon={<AddIcon />}
                onClick={() => {
                  setText({ ...text, costs: [...text.costs, newCost(nextKey.current)] });
                  nextKey.current += 1;
                }}
              >
                {words.addLine}
              </Button>
            </div>
          </div>
          <GoodMonthsEntry
            told={told}
            months={text.months}
            onChange={set('months')}
            names={names}
            error={faults.months}
          />
          <Field
            label={words.steps}
            hint={stepsHint(text, currency, rules.years)}
            kind="number"
            value={text.irreversible}
            onChange={set('irreversible')}
            maxLength={4}
            short
            optional
            error={faults.irreversible}
          />
          {text.irreversible.trim() !== '' && text.irreversible.trim() !== '0' && (
            <Choice
              label={words.size}
              tiles="narrow"
              options={(['small', 'large'] as const).map((value) => ({ value, label: words.sizes[value] }))}
              value={text.size}
              onChange={set('size')}
            />
          )}
          {(['does', 'risks', 'who'] as const).map((key) => (
            <Field
              key={key}
              label={words[key]}
              kind="long"
              value={text[key]}
              onChange={set(key)}
              maxLength={key === 'who' ? 500 : 1000}
              optional
            />
          ))}
          <Field
            label={w.options.note}
            kind="long"
            value={text.note}
            onChange={set('note')}
            maxLength={4000}
            optional
          />
        </>
      )}
    </PlannedSheet>
  );
}

/** So many by its costs as typed; nothing to say where nothing of it is for good. */
const stepsHint = ({ sort, costs }: OptionText, currency: string, years: number): string | undefined => {
  if (!optionSortOf(sort)?.irreversible) return undefined;
  const lines = costs.flatMap((cost) => {
    const read = readCost(cost, currency);
    return 'line' in read ? [read.line] : [];
  });
  return words.stepsHint(irreversibleTimes({ sort, costs: lines }, { years }));
};

function Said({ sort, signs, names }: { readonly sort: string } & Pick<OptionSheetProps['known'], 'signs' | 'names'>) {
  const row = optionSortOf(sort);
  const said = speaking(sort, signs);
  const against = [...said.against];
  return (
    <div className="stack">
      {row?.does && <p>{row.does}</p>}
      {row?.irreversible && <Notice kind="caution" title={row.irreversible} />}
      {said.for.length > 0 && (
        <div>
          <p className="strong">{w.options.speaksFor}</p>
          <Reasons reasons={said.for} nameOf={names} />
        </div>
      )}
      {against.length > 0 && (
        <div>
          <p className="strong">{w.options.speaksAgainst}</p>
          <Reasons reasons={against} nameOf={names} />
        </div>
      )}
    </div>
  );
}
