import { useId } from 'react';
import { number, w } from '../../words';
import { Button } from '../parts';
import { type NumberRead, numberRules, readNumber, stepped } from './airDraft';

const words = w.careDay;

interface NumberStepsProps {
  readonly what: NumberRead;
  readonly label: string;
  readonly hint?: string;
  readonly unit: string;
  readonly value: string;
  /** Where the first step starts: what was read last. */
  readonly from: number | undefined;
  readonly onChange: (value: string) => void;
}

/** One large number with steps for gloves; it can be typed too. Nothing stands there until it was read. */
export function NumberSteps({ what, label, hint, unit, value, from, onChange }: NumberStepsProps) {
  const id = useId();
  const [large, small] = numberRules[what].steps;
  const wrong = value !== '' && readNumber(value, what) === undefined;
  const step = (by: number) => (
    <Button
      size="round"
      aria-label={words.step(label, number(Math.abs(by), 1), by > 0)}
      onClick={() => onChange(stepped(value, what, by, from))}
    >
      {`${by > 0 ? '+' : '\u2212'}${number(Math.abs(by), 1)}`}
    </Button>
  );
  return (
    <div className="number-steps">
      <label htmlFor={id} className="number-steps-label">
        {label}
        {hint && <span className="soft line-detail">{hint}</span>}
      </label>
      <div className="number-steps-row">
        {step(-large)}
        {step(-small)}
        <div className="number-steps-value">
          <input
            id={id}
            value={value}
            inputMode="decimal"
            autoComplete="off"
            placeholder={words.unset}
            maxLength={6}
            aria-invalid={wrong || undefined}
            onChange={(e) => onChange(e.target.value)}
          />
          <span className="unit">{unit}</span>
        </div>
        {step(small)}
        {step(large)}
      </div>
      {wrong && <p className="field-error">{words.notRead(label)}</p>}
    </div>
  );
}
