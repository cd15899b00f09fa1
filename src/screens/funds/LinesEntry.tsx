import { w } from '../../words';
import { AddIcon, Button, Field } from '../parts';
import { CrossIcon } from '../parts/icons';
import { MoneyField } from '../parts/MoneyField';

const words = w.funds.sheet;

/** A cost as it is typed. */
export interface LineTyped {
  readonly id: string;
  readonly name: string;
  readonly amount: string;
}

interface LinesEntryProps {
  readonly lines: readonly LineTyped[];
  readonly onChange: (lines: readonly LineTyped[]) => void;
  readonly newId: () => string;
  readonly currency: string;
  readonly onCurrency: ((currency: string) => void) | undefined;
  readonly faults: Readonly<
    Record<string, { readonly name?: string | undefined; readonly amount?: string | undefined }>
  >;
}

/** The costs of a fund, one under the other. */
export function LinesEntry({ lines, onChange, newId, currency, onCurrency, faults }: LinesEntryProps) {
  const change = (id: string, patch: Partial<LineTyped>) =>
    onChange(lines.map((line) => (line.id === id ? { ...line, ...patch } : line)));
  return (
    <fieldset className="fund-lines stack">
      <legend className="strong">{words.lines}</legend>
      {lines.map((line, i) => (
        <div key={line.id} className="fund-line">
          <Field
            label={words.line(i + 1)}
            value={line.name}
            onChange={(name) => change(line.id, { name })}
            maxLength={200}
            error={faults[line.id]?.name}
          />
          <MoneyField
            label={words.lineAmount(i + 1)}
            value={line.amount}
            onChange={(amount) => change(line.id, { amount })}
            currency={currency}
            onCurrency={i === 0 ? onCurrency : undefined}
            error={faults[line.id]?.amount}
          />
          <Button
            kind="quiet"
            icon={<CrossIcon />}
            aria-label={words.removeLine(i + 1)}
            onClick={() => onChange(lines.filter(({ id }) => id !== line.id))}
          />
        </div>
      ))}
      <div className="row">
        <Button icon={<AddIcon />} onClick={() => onChange([...lines, { id: newId(), name: '', amount: '' }])}>
          {words.addLine}
        </Button>
      </div>
    </fieldset>
  );
}
