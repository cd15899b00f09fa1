import { useState } from 'react';
import type { GiftState } from '../../engine/fund';
import { isMoney, readMoney } from '../../engine/money';
import type { BodyOf, Thing } from '../../engine/record';
import { moneyTyped, percentTyped, sayReason, typedPercent, w } from '../../words';
import { Choice, Choices, Field, Tick } from '../parts';
import { MoneyField } from '../parts/MoneyField';
import { useDesk, useMoney, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';

const words = w.funds.giftSheet;
const states: readonly GiftState[] = ['in hand', 'pledged', 'hoped', 'spent', 'lost'];

interface GiftSheetProps {
  readonly fund: Thing<'fund'>;
  /** Undefined: a new one. */
  readonly gift: Thing<'gift'> | undefined;
  readonly onClose: () => void;
}

/** One gift: from whom, how much, how sure, when, and what it may pay for. */
export function GiftSheet({ fund, gift, onClose }: GiftSheetProps) {
  const desk = useDesk();
  const { currency: rulesCurrency, onCurrency, keepCurrency } = useMoney();
  const from = gift?.body;
  const { lines, sculpture } = fund.body;
  const own = from?.amount.currency ?? lines[0]?.amount.currency;
  const currency = own ?? rulesCurrency;
  const [who, setWho] = useState(from?.who ?? '');
  const [amount, setAmount] = useState(from ? moneyTyped(from.amount) : '');
  const [state, setState] = useState<GiftState>(from?.state ?? 'hoped');
  const [chance, setChance] = useState(from?.chance === undefined ? '' : percentTyped(from.chance));
  const [expected, setExpected] = useState(from?.expected ?? '');
  const [received, setReceived] = useState(from?.received ?? '');
  const [only, setOnly] = useState<readonly string[]>(from?.only ?? []);
  const [inKind, setInKind] = useState(from?.inKind ?? false);
  const [note, setNote] = useState(from?.note ?? '');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['gift', gift?.thing, fund.thing], {
    who: [who, setWho],
    amount: [amount, setAmount],
    state: [state, setState],
    chance: [chance, setChance],
    expected: [expected, setExpected],
    received: [received, setReceived],
    only: [only, setOnly],
    inKind: [inKind, setInKind],
    note: [note, setNote],
  });
  const toCome = state === 'pledged' || state === 'hoped';
  const came = state === 'in hand' || state === 'spent';
  const read = readMoney(amount, currency);
  const percent = chance.trim() === '' ? undefined : (typedPercent(chance) ?? Number.NaN);
  const chanceWrong = toCome && (percent === undefined ? state === 'hoped' : !(percent >= 0 && percent <= 100));
  // What is called in hand came today, unless somebody says otherwise.
  const choose = (next: GiftState) => {
    setState(next);
    if (next === 'in hand' && received === '') setReceived(desk.today());
  };
  const body = (): BodyOf<'gift'> | undefined => {
    setTried(true);
    if (!who.trim() || !isMoney(read) || chanceWrong) return;
    return {
      ...{ fund: fund.thing, sculpture, who: who.trim(), amount: read, state },
      chance: toCome && percent !== undefined ? percent / 100 : undefined,
      expected: toCome ? expected || undefined : undefined,
      received: came ? received || undefined : undefined,
      only: only.length > 0 ? [...only] : undefined,
      inKind: inKind ? (true as const) : undefined,
      note: note.trim() || undefined,
    };
  };

  return (
    <PlannedSheet
      kind="gift"
      thing={gift?.thing}
      title={gift ? words.edit : words.add}
      words={words}
      body={body}
      fixed={['fund', 'sculpture']}
      before={own ? undefined : keepCurrency}
      typed={typed}
      onClose={onClose}
    >
      <Field
        label={words.who}
        value={who}
        onChange={setWho}
        maxLength={200}
        error={tried && !who.trim() ? words.whoMissing : undefined}
      />
      <MoneyField
        label={words.amount}
        value={amount}
        onChange={setAmount}
        currency={currency}
        onCurrency={own ? undefined : onCurrency}
        error={tried && !isMoney(read) ? sayReason(read) : undefined}
      />
      <Choice
        label={words.state}
        value={state}
        onChange={choose}
        options={states.map((one) => ({ value: one, label: w.funds.state[one], detail: w.funds.stateWhat[one] }))}
      />
      {toCome && (
        <>
          <Field
            label={words.chance}
            hint={words.chanceHint[state]}
            takes="percent"
            value={chance}
            onChange={setChance}
            maxLength={8}
            optional={state === 'pledged'}
            error={tried && chanceWrong ? words.chanceWrong : undefined}
            short
          />
          <Field label={words.expected} kind="date" value={expected} onChange={setExpected} short optional />
        </>
      )}
      {came && (
        <Field
          label={words.received}
          kind="date"
          value={received}
          onChange={setReceived}
          optional={state !== 'in hand'}
          short
        />
      )}
      {lines.length > 0 && (
        <Choices
          label={words.only}
          hint={words.onlyHint}
          values={only}
          onChange={setOnly}
          options={lines.map(({ id, name }) => ({ value: id, label: name }))}
        />
      )}
      <Tick label={words.inKind} detail={words.inKindWhat} checked={inKind} onChange={setInKind} />
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </PlannedSheet>
  );
}
