import { useState } from 'react';
import type { Outcome } from '../../actions';
import type { QuantityLine } from '../../engine/campaign';
import { isCurrency } from '../../engine/money';
import type { BodyOf, Thing } from '../../engine/record';
import { amountText, sayReason, taskName, w } from '../../words';
import { Field, MoneyField } from '../parts';
import { PeopleEntry } from '../parts/PeopleEntry';
import { type PersonSaid, peopleKept, peopleWhole } from '../parts/peopleSaid';
import { useDesk, useMoney, useTyped } from '../shell';
import { PlannedSheet } from '../shell/PlannedSheet';
import { noPrice, type PriceText, priceTexts, readPrices } from './bidText';
import type { OpenFile } from './OfCampaign';

const words = w.campaign.bids.sheet;

interface BidSheetProps {
  readonly file: OpenFile;
  readonly lines: readonly QuantityLine[];
  /** Undefined: a new one. */
  readonly bid: Thing<'bid'> | undefined;
  readonly onClose: () => void;
}

/** One bid along the lines of the schedule, in one currency. */
export function BidSheet({ file, lines, bid, onClose }: BidSheetProps) {
  const desk = useDesk();
  const money = useMoney();
  const from = bid?.body;
  const [who, setWho] = useState(from?.who ?? '');
  const [date, setDate] = useState<string>(from?.date ?? desk.today());
  const [validUntil, setValidUntil] = useState<string>(from?.validUntil ?? '');
  const [visited, setVisited] = useState<string>(from?.visited ?? '');
  const [withdrawn, setWithdrawn] = useState<string>(from?.withdrawn ?? '');
  const [ownCurrency, setOwnCurrency] = useState<string | undefined>(from?.currency);
  const currency = ownCurrency ?? money.currency;
  const [texts, setTexts] = useState(() => priceTexts(from?.lines ?? [], from?.currency ?? ''));
  const [named, setNamed] = useState<readonly PersonSaid[]>(from?.named ?? []);
  const [note, setNote] = useState(from?.note ?? '');
  const [tried, setTried] = useState(false);
  const unkept = useTyped(['bid', bid?.thing, file.campaign.thing], {
    who: [who, setWho],
    date: [date, setDate],
    validUntil: [validUntil, setValidUntil],
    visited: [visited, setVisited],
    withdrawn: [withdrawn, setWithdrawn],
    ownCurrency: [ownCurrency, setOwnCurrency],
    texts: [texts, setTexts],
    named: [named, setNamed],
    note: [note, setNote],
  });
  const read = readPrices(lines, texts, currency);
  const body = (): BodyOf<'bid'> | undefined => {
    setTried(true);
    const whole = Object.keys(read.wrong).length + read.measuredWrong.size === 0 && peopleWhole(named);
    if (!who.trim() || !date || !isCurrency(currency) || !whole) return undefined;
    const people = peopleKept(named);
    return {
      sculpture: file.campaign.body.sculpture,
      campaign: file.campaign.thing,
      who: who.trim(),
      date,
      validUntil: validUntil || undefined,
      visited: visited || undefined,
      withdrawn: withdrawn || undefined,
      currency,
      // Prices of lines that are no longer in the schedule stay with the bid: it said them.
      lines: [...read.lines, ...(from?.lines.filter(({ item }) => !lines.some(({ id }) => id === item)) ?? [])],
      named: people.length > 0 ? people : undefined,
      note: note.trim() || undefined,
    };
  };
  // The currency of this bid becomes that of the collection only where it was just typed and none is set.
  const before = async (): Promise<Outcome> => (money.currency === currency ? money.keepCurrency() : { ok: true });
  const setText = (id: string, patch: Partial<PriceText>) =>
    setTexts({ ...texts, [id]: { ...(texts[id] ?? noPrice), ...patch } });
  const setCurrency = (text: string) => {
    const code = text.toUpperCase();
    setOwnCurrency(code);
    money.onCurrency?.(code);
  };
  return (
    <PlannedSheet
      kind="bid"
      thing={bid?.thing}
      title={bid ? words.edit : words.add}
      words={words}
      body={body}
      before={before}
      typed={unkept}
      onClose={onClose}
    >
      <Field
        label={words.who}
        value={who}
        onChange={setWho}
        maxLength={200}
        error={tried && !who.trim() ? words.whoMissing : undefined}
      />
      <div className="fields">
        <Field
          label={words.date}
          kind="date"
          value={date}
          onChange={setDate}
          error={tried && !date ? words.dayMissing : undefined}
        />
        <Field label={words.validUntil} kind="date" value={validUntil} onChange={setValidUntil} optional />
        <Field label={words.visited} kind="date" value={visited} onChange={setVisited} optional />
      </div>
      <Field
        label={words.currency}
        hint={words.currencyHint}
        value={currency}
        onChange={setCurrency}
        maxLength={3}
        short
        error={tried && !isCurrency(currency) ? words.currencyHint : undefined}
      />
      <fieldset className="choice stack">
        <legend>{words.prices}</legend>
        <p className="hint">{words.pricesHint}</p>
        {lines.map((line) => {
          const { price, measured } = texts[line.id] ?? noPrice;
          const wrong = read.wrong[line.id];
          return (
            <div key={line.id} className="fields">
              <MoneyField
                label={line.name}
                hint={`${taskName(line.task)}, ${amountText(line)}`}
                currency={currency}
                value={price}
                onChange={(text) => setText(line.id, { price: text })}
                optional
                error={wrong && tried ? sayReason(wrong) : undefined}
              />
              {line.unit === 'm2' && (
                <Field
                  label={words.measured(line.name)}
                  kind="number"
                  unit={w.campaign.quantities.units.m2}
                  value={measured}
                  onChange={(text) => setText(line.id, { measured: text })}
                  maxLength={12}
                  short
                  optional
                  error={tried && read.measuredWrong.has(line.id) ? words.measuredWrong : undefined}
                />
              )}
            </div>
          );
        })}
      </fieldset>
      <PeopleEntry label={words.people} people={named} onChange={setNamed} tried={tried} />
      {bid && <Field label={words.withdrawn} kind="date" value={withdrawn} onChange={setWithdrawn} short optional />}
      <Field label={words.note} kind="long" value={note} onChange={setNote} maxLength={4000} optional />
    </PlannedSheet>
  );
}
