import { currency as currencyWord, readBackMoney, w } from '../../words';
import { Field, type FieldProps } from './Field';
import './moneyField.css';

interface MoneyFieldProps extends Omit<FieldProps, 'kind' | 'takes' | 'read' | 'unit' | 'maxLength'> {
  /** What the amount is in; empty where the collection has none yet. */
  readonly currency: string;
  /** Given where there may be none yet: the field then asks for it. See useMoney. */
  readonly onCurrency?: ((currency: string) => void) | undefined;
}

/** An amount as text; read it with readMoney. Where no currency is set yet it is asked for beside the first amount, never assumed. */
export function MoneyField({ currency, onCurrency, short = true, ...field }: MoneyFieldProps) {
  // One shape for both: whether the collection has a currency is known a moment after the form is there, and what is being typed stays.
  return (
    <div className="money-entry">
      <Field
        {...field}
        short={short}
        kind="number"
        read={(text) => readBackMoney(text, currency)}
        maxLength={30}
        unit={onCurrency || !currency ? undefined : currencyWord(currency)}
      />
      {onCurrency && (
        <Field
          label={w.parts.currency}
          hint={w.parts.currencyHint}
          value={currency}
          onChange={(text) => onCurrency(text.toUpperCase())}
          maxLength={3}
          short
        />
      )}
    </div>
  );
}
