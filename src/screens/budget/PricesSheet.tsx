import { useState } from 'react';
import { editPlanned, setPlanned } from '../../actions';
import type { Price } from '../../engine/budget';
import { isMoney, readMoney } from '../../engine/money';
import { nameOf, type Thing } from '../../engine/record';
import { treatmentOf, workEffects } from '../../engine/trade';
import { moneyTyped, sayReason, w } from '../../words';
import { AddIcon, Button, Notice, Sheet, SheetActs } from '../parts';
import { CrossIcon } from '../parts/icons';
import { MoneyField } from '../parts/MoneyField';
import { Select } from '../parts/Select';
import { say, useDeed, useDesk, useMoney, useTyped } from '../shell';

const words = w.budget.sheet;

interface PriceTyped {
  readonly key: string;
  readonly type: string;
  readonly per: Price['per'];
  readonly amount: string;
}

const types = workEffects.map(({ type }) => type);
const ways = ['m2', 'zone', 'work'] as const;

interface PricesSheetProps {
  readonly plan: Thing<'yearPlan'> | undefined;
  readonly year: number;
  readonly onClose: () => void;
}

/** The prices of a year, one under the other. */
export function PricesSheet({ plan, year, onClose }: PricesSheetProps) {
  const desk = useDesk();
  const { currency: rulesCurrency, onCurrency, keepCurrency } = useMoney();
  const kept = plan?.body.prices ?? [];
  const own = kept[0]?.each.currency;
  const currency = own ?? rulesCurrency;
  const blank = (type: string): PriceTyped => ({ key: desk.newId(), type, per: 'm2', amount: '' });
  const [rows, setRows] = useState<readonly PriceTyped[]>(() =>
    kept.length > 0
      ? kept.map(({ type, per, each }) => ({ key: desk.newId(), type, per, amount: moneyTyped(each) }))
      : [blank(types[0] ?? '')],
  );
  const [tried, setTried] = useState(false);
  const typed = useTyped(['prices of the year', String(year)], { rows: [rows, setRows] });
  const { run, refused, busy } = useDeed(typed);
  const change = (key: string, patch: Partial<PriceTyped>) =>
    setRows(rows.map((row) => (row.key === key ? { ...row, ...patch } : row)));
  const read = rows.map((row) => ({ ...row, each: readMoney(row.amount, currency) }));

  const save = () => {
    setTried(true);
    const prices = read.flatMap(({ type, per, each }): Price[] => (isMoney(each) ? [{ type, per, each }] : []));
    if (prices.length < read.length) return;
    void run(
      async () => {
        const set = own || prices.length === 0 ? ({ ok: true } as const) : await keepCurrency();
        if (!set.ok) return set;
        return plan
          ? editPlanned(desk, 'yearPlan', plan.thing, { prices })
          : setPlanned(desk, 'yearPlan', nameOf.yearPlan(desk.collection, year), { year, works: [], prices });
      },
      () => {
        say(words.saved);
        onClose();
      },
    );
  };

  return (
    <Sheet
      open
      title={words.title(year)}
      onClose={onClose}
      actions={<SheetActs save={words.save} onSave={save} busy={busy} />}
    >
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      {read.map(({ key, type, per, amount, each }, i) => (
        <div key={key} className="price-row">
          <Select
            label={words.type(i + 1)}
            value={type}
            onChange={(next) => change(key, { type: next })}
            options={[...types, ...(types.includes(type) ? [] : [type])].map((id) => ({
              value: id,
              label: treatmentOf(id)?.name ?? id,
            }))}
          />
          <MoneyField
            label={words.price(i + 1)}
            value={amount}
            onChange={(next) => change(key, { amount: next })}
            currency={currency}
            onCurrency={i === 0 && !own ? onCurrency : undefined}
            error={tried && !isMoney(each) ? sayReason(each) : undefined}
          />
          <Select
            label={words.per(i + 1)}
            value={per}
            onChange={(next) => change(key, { per: ways.find((way) => way === next) ?? per })}
            options={ways.map((way) => ({ value: way, label: w.budget.per[way] }))}
          />
          <Button
            kind="quiet"
            icon={<CrossIcon />}
            aria-label={words.remove(i + 1)}
            onClick={() => setRows(rows.filter((row) => row.key !== key))}
          />
        </div>
      ))}
      <div className="row">
        <Button
          icon={<AddIcon />}
          onClick={() =>
            setRows([...rows, blank(types.find((type) => !rows.some((row) => row.type === type)) ?? types[0] ?? '')])
          }
        >
          {words.add}
        </Button>
      </div>
    </Sheet>
  );
}
