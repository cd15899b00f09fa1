import { useState } from 'react';
import { isMoney, readMoney } from '../../engine/money';
import type { BodyOf } from '../../engine/record';
import { liftsOf } from '../../engine/year';
import { amounts, date, list, money, moneyTyped, sayReason, w } from '../../words';
import { AddIcon, Button, Field, Notice, OnIcon, Section, Sheet, SheetActs } from '../parts';
import { MoneyField } from '../parts/MoneyField';
import { say, useDeed, useDesk, useMoney, useTyped } from '../shell';
import { keepYear } from './keepYear';
import type { YearAtHand } from './useYear';
import '../parts/lines.css';

const words = w.year;

type LiftDay = NonNullable<BodyOf<'yearPlan'>['liftDays']>[number];

/** Days a lift is hired, what they cost together, and the works that still want one. */
export function LiftDays({ atHand }: { readonly atHand: YearAtHand }) {
  const { plan, rows, year } = atHand;
  const [open, setOpen] = useState<number | 'new'>();
  const days = plan?.body.liftDays ?? [];
  const works = rows.flatMap(({ row }) => row ?? []);
  const { cost, unpriced, notBooked } = liftsOf({ year, works, liftDays: days });
  const missing = rows.filter(({ around }) => notBooked.includes(around.sculpture.thing)).map(({ name }) => name);
  return (
    <Section
      title={words.liftTitle}
      lead={words.liftWho}
      actions={
        <span className="not-printed">
          <Button icon={<AddIcon />} onClick={() => setOpen('new')}>
            {words.liftAdd}
          </Button>
        </span>
      }
    >
      {missing.length > 0 && <Notice kind="caution" title={words.liftMissing(missing)} />}
      {days.length === 0 ? (
        <p className="soft">{words.liftNone}</p>
      ) : (
        <>
          <ul className="lines bare">
            {days.map((one, i) => (
              <li key={`${one.day} ${one.note ?? ''}`}>
                <button type="button" className="line" onClick={() => setOpen(i)}>
                  <span className="grow">
                    <span className="strong figures">{date(one.day)}</span>
                    <span className="soft line-detail">
                      {[one.cost && money(one.cost), one.note].filter(Boolean).join(' · ')}
                    </span>
                  </span>
                  <OnIcon />
                </button>
              </li>
            ))}
          </ul>
          {cost.length > 0 && <p className="strong figures">{words.liftSum(days.length, list([...amounts(cost)]))}</p>}
          {unpriced > 0 && <p className="soft">{words.liftUnpriced(unpriced)}</p>}
        </>
      )}
      {open !== undefined && (
        <LiftDaySheet atHand={atHand} at={open === 'new' ? undefined : open} onClose={() => setOpen(undefined)} />
      )}
    </Section>
  );
}

interface LiftDaySheetProps {
  readonly atHand: YearAtHand;
  readonly at: number | undefined;
  readonly onClose: () => void;
}

function LiftDaySheet({ atHand, at, onClose }: LiftDaySheetProps) {
  const desk = useDesk();
  const days = atHand.plan?.body.liftDays ?? [];
  const start = at === undefined ? undefined : days[at];
  const { currency, onCurrency, keepCurrency } = useMoney();
  const [day, setDay] = useState(start?.day ?? '');
  const [cost, setCost] = useState(start?.cost ? moneyTyped(start.cost) : '');
  const [note, setNote] = useState(start?.note ?? '');
  const [tried, setTried] = useState(false);
  const typed = useTyped(['lift day', start?.day, String(atHand.year)], {
    day: [day, setDay],
    cost: [cost, setCost],
    note: [note, setNote],
  });
  const { run, refused, busy } = useDeed(typed);
  const amount = cost.trim() ? readMoney(cost, start?.cost?.currency ?? currency) : undefined;
  const wrong = amount && !isMoney(amount) ? sayReason(amount) : undefined;
  const keep = async (own: LiftDay | undefined, said: string) => {
    const liftDays = [...days.filter((_, i) => i !== at), ...(own ? [own] : [])].sort((a, b) =>
      a.day.localeCompare(b.day),
    );
    await run(
      async () => {
        const set = own?.cost ? await keepCurrency() : { ok: true as const };
        if (!set.ok) return set;
        return keepYear(desk, atHand, { liftDays });
      },
      () => {
        say(said);
        onClose();
      },
    );
  };
  const save = () => {
    setTried(true);
    if (!day || wrong) return;
    const priced = amount && isMoney(amount) ? { cost: amount } : {};
    void keep({ day, ...priced, ...(note.trim() ? { note: note.trim() } : {}) }, words.sheet.saved);
  };
  return (
    <Sheet
      open
      title={start ? words.liftEdit : words.liftAdd}
      onClose={onClose}
      actions={
        <SheetActs
          save={words.sheet.save}
          onSave={save}
          remove={start && { word: words.liftRemove, go: () => void keep(undefined, words.liftRemoved) }}
          busy={busy}
        />
      }
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      <Field
        label={words.liftDay}
        kind="date"
        value={day}
        onChange={setDay}
        error={tried && !day ? words.liftDayMissing : undefined}
        short
      />
      <MoneyField
        label={words.liftCost}
        value={cost}
        onChange={setCost}
        currency={start?.cost?.currency ?? currency}
        onCurrency={onCurrency}
        error={tried ? wrong : undefined}
        optional
      />
      <Field
        label={words.liftNote}
        hint={words.liftNoteHint}
        value={note}
        onChange={setNote}
        maxLength={300}
        optional
      />
    </Sheet>
  );
}
