import { type ReactNode, useId, useState } from 'react';
import { type ReadBack, readBack, type TypedAs, unitOf, w } from '../../words';
import './field.css';

export interface FieldProps {
  readonly label: string;
  readonly value: string;
  /** Text comes normalised (NFC), so that equal words are equal bytes on every tablet. */
  readonly onChange: (value: string) => void;
  /** 'long' is a note of several lines; 'secret' is not shown as it is typed. */
  readonly kind?: 'text' | 'number' | 'date' | 'long' | 'secret';
  /** A number, and of what; a measure brings its unit. Read it with typedNumber, typedMeasure, typedPercent or typedHours. */
  readonly takes?: TypedAs;
  /** How what is typed is read, where it is no such number. */
  readonly read?: (text: string) => ReadBack;
  readonly hint?: ReactNode;
  /** What is wrong and what to do, in a sentence. */
  readonly error?: string | undefined;
  readonly optional?: boolean;
  /** Unit shown after the value: "m". */
  readonly unit?: string;
  readonly maxLength?: number;
  readonly short?: boolean;
  readonly autoFocus?: boolean;
}

const types: Readonly<Record<string, string>> = { date: 'date', secret: 'password' };

const unitTaken = (takes: TypedAs | undefined): string | undefined => {
  if (takes === undefined || takes === 'number' || takes === 'hours') return undefined;
  return takes === 'percent' ? '%' : unitOf(takes);
};

/** A labelled entry. Its hint and error are read out with it. */
export function Field(props: FieldProps) {
  const { label, value, onChange, takes, kind = takes ? 'number' : 'text', hint, optional, maxLength, short } = props;
  const { read = takes || kind === 'number' ? (text: string) => readBack(text, takes ?? 'number') : undefined } = props;
  const id = useId();
  // While somebody types, half a number is no fault.
  const [left, setLeft] = useState(false);
  const { told, fault }: ReadBack = read?.(value) ?? {};
  const error = props.error ?? (left ? fault : undefined);
  const unit = props.unit ?? unitTaken(takes);
  const said = [hint && 'hint', told && 'read', error && 'error'].filter(Boolean);
  const shared = {
    id,
    value,
    maxLength,
    'aria-describedby': said.map((what) => `${id}-${what}`).join(' ') || undefined,
    'aria-invalid': error ? true : undefined,
    'aria-required': optional ? undefined : true,
    onChange: (e: { target: { value: string } }) => {
      setLeft(false);
      onChange(e.target.value.normalize('NFC'));
    },
    onBlur: () => setLeft(true),
  };
  return (
    <div className={short ? 'field short' : 'field'}>
      <label htmlFor={id}>
        {label}
        {optional && <span className="optional"> ({w.parts.optional})</span>}
      </label>
      {hint && (
        <p className="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div className="entry">
        {kind === 'long' ? (
          <textarea rows={3} {...shared} />
        ) : (
          <input
            type={types[kind] ?? 'text'}
            inputMode={kind === 'number' ? 'decimal' : undefined}
            autoComplete="off"
            // A form opened by a touch on "Add" starts where the hand expects it.
            // biome-ignore lint/a11y/noAutofocus: only where the person has just asked to type
            autoFocus={props.autoFocus}
            {...shared}
          />
        )}
        {unit && <span className="unit">{unit}</span>}
      </div>
      {told && (
        <p className="read-back" id={`${id}-read`}>
          {told}
        </p>
      )}
      {error && (
        <p className="field-error" id={`${id}-error`}>
          {error}
        </p>
      )}
    </div>
  );
}
