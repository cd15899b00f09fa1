import type { MoneyRules } from '../../engine/money';
import { percentTyped, w } from '../../words';
import { Button, Field, MoneyField, Tick } from '../parts';
import { Select } from '../parts/Select';
import type { CostFault, CostText } from './costText';

const words = w.options.sheet;
const everies = ['', '1', '2', '3', '4', '5', '6', '7', '8', '10', '12', '15', '20'];
const everyText = (every: string): string =>
  every === '' ? words.once : every === '1' ? words.yearly : words.every(Number(every));

interface CostLineProps {
  readonly text: CostText;
  readonly fault: CostFault | undefined;
  readonly rules: MoneyRules;
  readonly currency: string;
  readonly onCurrency: ((currency: string) => void) | undefined;
  readonly onChange: (text: CostText) => void;
  readonly onRemove: () => void;
}

/** One cost of a way: what, how much, when, and how sure the price is. */
export function CostLine({ text, fault, rules, currency, onCurrency, onChange, onRemove }: CostLineProps) {
  const set =
    <K extends keyof CostText>(key: K) =>
    (value: CostText[K]) =>
      onChange({ ...text, [key]: value });
  return (
    <fieldset className="cost-line">
      <legend>{text.name || words.lineName}</legend>
      <Field label={words.lineName} value={text.name} onChange={set('name')} maxLength={200} error={fault?.name} />
      <MoneyField
        label={words.amount}
        value={text.amount}
        onChange={set('amount')}
        currency={currency}
        onCurrency={onCurrency}
        error={fault?.amount}
      />
      <div className="entry-row">
        <Select
          label={words.falls}
          value={text.every}
          onChange={(every) => onChange({ ...text, every, contingency: every === '' && text.contingency })}
          options={everies.map((value) => ({ value, label: everyText(value) }))}
        />
        <Field
          label={words.first}
          hint={words.firstHint}
          kind="number"
          value={text.first}
          onChange={set('first')}
          maxLength={3}
          error={fault?.first}
        />
        {text.every !== '' && (
          <Field
            label={words.last}
            kind="number"
            value={text.last}
            onChange={set('last')}
            maxLength={3}
            optional
            error={fault?.last}
          />
        )}
      </div>
      <Field
        label={words.growth}
        hint={words.growthHint(percentTyped(rules.growth))}
        takes="percent"
        value={text.growth}
        onChange={set('growth')}
        maxLength={6}
        short
        optional
        error={fault?.growth}
      />
      <Tick
        label={words.contingency(percentTyped(rules.contingency))}
        checked={text.contingency}
        onChange={set('contingency')}
      />
      <Select
        label={words.price}
        value={text.price}
        onChange={(price) => onChange({ ...text, price: price as CostText['price'] })}
        options={(['quote', 'estimate', 'made up'] as const).map((value) => ({ value, label: words.prices[value] }))}
      />
      <div className="row">
        <Button kind="quiet" onClick={onRemove}>
          {words.removeLine(text.name)}
        </Button>
      </div>
    </fieldset>
  );
}
