import { type ReactNode, useId } from 'react';
import { Tile } from './Tile';
import './choice.css';

export interface Option<T extends string> {
  readonly value: T;
  readonly label: string;
  readonly detail?: ReactNode;
  /** A drawing beside the words: a swatch, a patch. */
  readonly picture?: ReactNode;
}

interface Shared<T extends string> {
  readonly label: string;
  readonly hint?: ReactNode;
  readonly error?: string | undefined;
  readonly options: readonly Option<T>[];
  readonly size?: 'usual' | 'round';
  /** How wide a tile is at least: 'narrow' for single words and figures, 'full' for one a line. */
  readonly tiles?: 'narrow' | 'usual' | 'full';
  /** The question stands elsewhere on the screen already: keep it for ears only. */
  readonly labelUnseen?: boolean;
}

export interface ChoiceProps<T extends string> extends Shared<T> {
  readonly value: T | undefined;
  readonly onChange: (value: T) => void;
}

/** One of several, as big tiles; a native radio group underneath. */
export function Choice<T extends string>({ value, onChange, ...shared }: ChoiceProps<T>) {
  const name = useId();
  return <Tiles {...shared} type="radio" name={name} isChosen={(option) => option === value} choose={onChange} />;
}

export interface ChoicesProps<T extends string> extends Shared<T> {
  readonly values: readonly T[];
  readonly onChange: (values: readonly T[]) => void;
}

/** Any number of several, as big tiles; native check boxes underneath. */
export function Choices<T extends string>({ values, onChange, ...shared }: ChoicesProps<T>) {
  const turn = (option: T) =>
    onChange(
      values.includes(option)
        ? values.filter((v) => v !== option)
        : shared.options.map((o) => o.value).filter((v) => v === option || values.includes(v)),
    );
  return <Tiles {...shared} type="checkbox" isChosen={(option) => values.includes(option)} choose={turn} />;
}

interface TilesProps<T extends string> extends Shared<T> {
  readonly type: 'radio' | 'checkbox';
  readonly name?: string;
  readonly isChosen: (option: T) => boolean;
  readonly choose: (option: T) => void;
}

function Tiles<T extends string>(props: TilesProps<T>) {
  const {
    label,
    hint,
    error,
    options,
    size = 'usual',
    tiles = 'usual',
    labelUnseen,
    type,
    name,
    isChosen,
    choose,
  } = props;
  const id = useId();
  const told = [hint ? `${id}-hint` : '', error ? `${id}-error` : ''].filter(Boolean).join(' ') || undefined;
  return (
    <fieldset className="choice" aria-describedby={told}>
      <legend className={labelUnseen ? 'unseen' : undefined}>{label}</legend>
      {hint && (
        <p className="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div className={`tiles ${tiles} ${size}`}>
        {options.map((option) => (
          <Tile
            key={option.value}
            type={type}
            name={name}
            value={option.value}
            checked={isChosen(option.value)}
            onChange={() => choose(option.value)}
            label={option.label}
            detail={option.detail}
            picture={option.picture}
          />
        ))}
      </div>
      {error && (
        <p className="field-error" id={`${id}-error`}>
          {error}
        </p>
      )}
    </fieldset>
  );
}
