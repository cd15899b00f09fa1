import { useState } from 'react';
import { withReserve } from '../../engine/fund';
import type { BodyOf, Thing } from '../../engine/record';
import { moneyTyped, number, type WorkNamed, w } from '../../words';
import { Field, Tick } from '../parts';
import { MoneyField } from '../parts/MoneyField';
import { Select } from '../parts/Select';
import { useDesk, useMoney, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';
import { amountOrNone, readLines } from './fundTyped';
import { LinesEntry, type LineTyped } from './LinesEntry';

const words = w.funds.sheet;

interface FundSheetProps {
  readonly works: readonly WorkNamed[];
  /** Undefined: a new one. */
  readonly fund: Thing<'fund'> | undefined;
  /** One with gifts is closed, not taken away. */
  readonly hasGifts: boolean;
  readonly onClose: () => void;
}

/** What a fund is for, what it must pay for and by when. */
export function FundSheet({ works, fund, hasGifts, onClose }: FundSheetProps) {
  const desk = useDesk();
  const { rules, currency: rulesCurrency, onCurrency, keepCurrency } = useMoney();
  const from = fund?.body;
  // What stands there already has its currency, whether the collection has one or not.
  const own = from?.lines[0]?.amount.currency;
  const currency = own ?? rulesCurrency;
  const [title, setTitle] = useState(from?.title ?? '');
  const [work, setWork] = useState(from?.sculpture ?? '');
  const [lines, setLines] = useState<readonly LineTyped[]>(() =>
    from
      ? from.lines
          .filter(({ contingency }) => !contingency)
          .map(({ id, name, amount }) => ({ id, name, amount: moneyTyped(amount) }))
      : [{ id: desk.newId(), name: '', amount: '' }],
  );
  const [reserve, setReserve] = useState(from ? from.lines.some(({ contingency }) => contingency) : true);
  const [priced, setPriced] = useState(from?.priced ?? desk.today());
  const [wanted, setWanted] = useState(from?.wanted ?? '');
  const [yearly, setYearly] = useState(from?.yearly ? moneyTyped(from.yearly) : '');
  const [upkeep, setUpkeep] = useState(from?.upkeep ? moneyTyped(from.upkeep) : '');
  const [promise, setPromise] = useState(from?.promise ?? '');
  const [closed, setClosed] = useState(from?.closed ?? '');
  const [note, setNote] = useState(from?.note ?? '');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['fund', fund?.thing], {
    title: [title, setTitle],
    work: [work, setWork],
    lines: [lines, setLines],
    reserve: [reserve, setReserve],
    priced: [priced, setPriced],
    wanted: [wanted, setWanted],
    yearly: [yearly, setYearly],
    upkeep: [upkeep, setUpkeep],
    promise: [promise, setPromise],
    closed: [closed, setClosed],
    note: [note, setNote],
  });
  const read = readLines(lines, currency);
  const amountsRead = { yearly: amountOrNone(yearly, currency), upkeep: amountOrNone(upkeep, currency) };
  const wrong = (amount: (typeof amountsRead)['yearly']) => (tried && typeof amount === 'string' ? amount : undefined);
  const body = (): BodyOf<'fund'> | undefined => {
    setTried(true);
    const { yearly: comes, upkeep: costs } = amountsRead;
    if (!title.trim() || !priced || 'faults' in read || typeof comes === 'string' || typeof costs === 'string') return;
    return {
      ...{ title: title.trim(), sculpture: work || undefined },
      lines: withReserve(read.lines, reserve ? rules.contingency : undefined, words.reserveName, currency),
      ...{ priced, wanted: wanted || undefined, yearly: comes, upkeep: costs, closed: closed || undefined },
      ...{ promise: promise.trim() || undefined, note: note.trim() || undefined },
    };
  };

  return (
    <PlannedSheet
      kind="fund"
      thing={fund?.thing}
      title={fund ? words.edit : words.add}
      words={hasGifts ? { ...words, remove: undefined } : words}
      body={body}
      fixed={['sculpture']}
      before={own ? undefined : keepCurrency}
      typed={typed}
      onClose={onClose}
    >
      <Field
        label={words.title}
        hint={words.titleHint}
        value={title}
        onChange={setTitle}
        maxLength={200}
        error={tried && !title.trim() ? words.titleMissing : undefined}
      />
      {!fund && works.length > 0 && (
        <Select
          label={words.work}
          value={work}
          onChange={setWork}
          options={[
            { value: '', label: words.all },
            ...works.map(({ thing, name }) => ({ value: thing, label: name })),
          ]}
        />
      )}
      <LinesEntry
        lines={lines}
        onChange={setLines}
        newId={() => desk.newId()}
        currency={currency}
        onCurrency={own ? undefined : onCurrency}
        faults={tried && 'faults' in read ? read.faults : {}}
      />
      <Tick
        label={words.reserve(number(rules.contingency * 100, 1))}
        detail={words.reserveWhat}
        checked={reserve}
        onChange={setReserve}
      />
      <Field
        label={words.priced}
        kind="date"
        value={priced}
        onChange={setPriced}
        error={tried && !priced ? words.pricedMissing : undefined}
        short
      />
      <Field label={words.wanted} kind="date" value={wanted} onChange={setWanted} short optional />
      <MoneyField
        label={words.yearly}
        hint={words.yearlyHint}
        value={yearly}
        onChange={setYearly}
        currency={currency}
        error={wrong(amountsRead.yearly)}
        optional
      />
      <MoneyField
        label={words.upkeep}
        value={upkeep}
        onChange={setUpkeep}
        currency={currency}
        error={wrong(amountsRead.upkeep)}
        optional
      />
      <Field
        label={words.promise}
        hint={words.promiseHint}
        kind="long"
        value={promise}
        onChange={setPromise}
        maxLength={2000}
        optional
      />
      {fund && <Field label={words.closedDay} kind="date" value={closed} onChange={setClosed} short optional />}
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </PlannedSheet>
  );
}
