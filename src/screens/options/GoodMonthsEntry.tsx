import type { GoodMonthsTold } from '../../engine/options';
import { monthsText, type NameOfThing, w } from '../../words';
import { Button, Field } from '../parts';
import { Reasons } from '../parts/Reasons';
import { monthsTyped, type OptionText } from './optionText';

const words = w.options.sheet;

interface GoodMonthsEntryProps {
  readonly told: GoodMonthsTold | undefined;
  readonly months: OptionText['months'];
  readonly onChange: (months: OptionText['months']) => void;
  readonly names: NameOfThing;
  readonly error: string | undefined;
}

/** Good months a year: what this collection's own holds say first, and what she enters stands. */
export function GoodMonthsEntry({ told, months, onChange, names, error }: GoodMonthsEntryProps) {
  const proposed = told?.months;
  return (
    <fieldset className="cost-line">
      <legend>{words.goodMonths}</legend>
      <p className="hint">{words.goodMonthsHint}</p>
      {told && (
        <div>
          <Reasons reasons={told.reasons} nameOf={names} />
          {proposed && (
            <Button onClick={() => onChange(monthsTyped(proposed))}>
              {words.take(`${monthsText(proposed)}, ${w.options.from[proposed.from]}`)}
            </Button>
          )}
        </div>
      )}
      <div className="entry-row">
        {(['value', 'low', 'high'] as const).map((key) => (
          <Field
            key={key}
            label={words[key]}
            kind="number"
            unit={words.months}
            value={months[key]}
            onChange={(value) => onChange({ ...months, [key]: value })}
            maxLength={4}
            optional
            error={key === 'value' ? error : undefined}
          />
        ))}
      </div>
    </fieldset>
  );
}
