import { useState } from 'react';
import { isMoney, readMoney } from '../../engine/money';
import type { BodyOf, Thing } from '../../engine/record';
import { date, money, moneyTyped, nameOfOption, sayReason, w } from '../../words';
import { Choice, Field, MoneyField } from '../parts';
import { Select } from '../parts/Select';
import { useDesk, useMoney, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';

const words = w.options;

interface QuoteSheetProps {
  readonly sculpture: string;
  /** Undefined: a new one. */
  readonly quote: Thing<'quote'> | undefined;
  readonly quotes: readonly Thing<'quote'>[];
  readonly options: readonly Thing<'option'>[];
  readonly onClose: () => void;
}

/** A price somebody gave: of whom, for what, and until when it stands. It may be in another currency: it is shown and added to nothing. */
export function QuoteSheet({ sculpture, quote, quotes, options, onClose }: QuoteSheetProps) {
  const desk = useDesk();
  const money_ = useMoney();
  const own = quote?.body.amount.currency;
  const currency = own ?? money_.currency;
  const [text, setText] = useState({
    who: quote?.body.who ?? '',
    what: quote?.body.what ?? '',
    amount: quote ? moneyTyped(quote.body.amount) : '',
    state: (quote?.body.state ?? 'quote') as BodyOf<'quote'>['state'],
    date: quote?.body.date ?? desk.today(),
    validUntil: quote?.body.validUntil ?? '',
    option: quote?.body.option ?? '',
    renewedBy: quote?.body.renewedBy ?? '',
    note: quote?.body.note ?? '',
  });
  const [tried, setTried] = useState(false);
  const typed = useTyped(['quote', quote?.thing, sculpture], { text: [text, setText] });
  const set = (key: keyof typeof text) => (value: string) => setText({ ...text, [key]: value });
  const amount = readMoney(text.amount, currency);
  const missing = (key: 'who' | 'what' | 'date') => (tried && !text[key].trim() ? words.sheet.missing : undefined);
  const body = (): BodyOf<'quote'> | undefined => {
    setTried(true);
    if (!isMoney(amount) || !text.who.trim() || !text.what.trim() || !text.date) return;
    return {
      sculpture,
      who: text.who.trim(),
      what: text.what.trim(),
      amount,
      state: text.state,
      date: text.date,
      validUntil: text.validUntil || undefined,
      option: text.option || undefined,
      renewedBy: text.renewedBy || undefined,
      note: text.note.trim() || undefined,
    };
  };
  const later = quotes.filter(({ thing, body }) => thing !== quote?.thing && body.date >= text.date);
  return (
    <PlannedSheet
      kind="quote"
      thing={quote?.thing}
      title={quote ? words.editQuote : words.addQuote}
      words={{
        ...{ save: words.saveQuote, saved: words.quoteKept },
        ...{ remove: words.sheet.remove, removed: words.quoteRemoved },
      }}
      body={body}
      before={own ? undefined : money_.keepCurrency}
      typed={typed}
      onClose={onClose}
    >
      <Field label={words.quoteWho} value={text.who} onChange={set('who')} maxLength={200} error={missing('who')} />
      <Field label={words.quoteWhat} value={text.what} onChange={set('what')} maxLength={500} error={missing('what')} />
      <MoneyField
        label={words.amount}
        value={text.amount}
        onChange={set('amount')}
        currency={currency}
        onCurrency={own ? undefined : money_.onCurrency}
        error={tried && !isMoney(amount) ? sayReason(amount) : undefined}
      />
      <Choice
        label={words.quoteState}
        tiles="narrow"
        options={(['quote', 'estimate', 'actual'] as const).map((value) => ({ value, label: words.states[value] }))}
        value={text.state}
        onChange={(state) => setText({ ...text, state })}
      />
      <Field
        label={words.quoteDate}
        kind="date"
        value={text.date}
        onChange={set('date')}
        short
        error={missing('date')}
      />
      {text.state === 'quote' && (
        <Field
          label={words.validUntil}
          hint={words.validHint}
          kind="date"
          value={text.validUntil}
          onChange={set('validUntil')}
          short
          optional
        />
      )}
      {options.length > 0 && (
        <Select
          label={words.quoteOption}
          value={text.option}
          onChange={set('option')}
          options={[
            { value: '', label: words.noOption },
            ...options.map(({ thing }) => ({ value: thing, label: nameOfOption(options, thing) })),
          ]}
        />
      )}
      {later.length > 0 && (
        <Select
          label={words.renew}
          value={text.renewedBy}
          onChange={set('renewedBy')}
          options={[
            { value: '', label: words.notRenewed },
            ...later.map(({ thing, body }) => ({
              value: thing,
              label: words.renewOf(`${body.who}, ${date(body.date)}, ${money(body.amount)}`),
            })),
          ]}
        />
      )}
      <Field label={words.note} kind="long" value={text.note} onChange={set('note')} maxLength={4000} optional />
    </PlannedSheet>
  );
}
