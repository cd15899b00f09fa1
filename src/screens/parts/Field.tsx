import { type ReactNode, useId } from 'react';
import { w } from '../../words';
import './field.css';

export interface FieldProps {
  readonly label: string;
  readonly value: string;
  /** Text comes normalised (NFC), so that equal words are equal bytes on every tablet. */
  readonly onChange: (value: string) => void;
  /** 'long' is a note of several lines; 'secret' is not shown as it is typed. */
  readonly kind?: 'text' | 'number' | 'date' | 'long' | 'secret';
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

/** A labelled entry. Its hint and error are read out with it. */
export function Field(props: FieldProps) {
  const { label, value, onChange, kind = 'text', hint, error, optional, unit, maxLength, short } = props;
  const id = useId();
  const told = [hint ? `${id}-hint` : '', error ? `${id}-error` : ''].filter(Boolean).join(' ') || undefined;
  const shared = {
    id,
    value,
    maxLength,
    'aria-describedby': told,
    'aria-invalid': error ? true : undefined,
    'aria-required': optional ? undefined : true,
    onChange: (e: { target: { value: string } }) => onChange(e.target.value.normalize('NFC')),
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
      {error && (
        <p className="field-error" id={`${id}-error`}>
          {error}
        </p>
      )}
    </div>
  );
}
