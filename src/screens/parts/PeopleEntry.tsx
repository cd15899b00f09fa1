import { type ReactNode, useId } from 'react';
import { w } from '../../words';
import { Button } from './Button';
import { Field } from './Field';
import { AddIcon, CrossIcon } from './icons';
import { isStarted, type PersonSaid } from './peopleSaid';
import './people.css';

export interface PeopleEntryProps {
  readonly label: string;
  readonly hint?: ReactNode;
  readonly people: readonly PersonSaid[];
  readonly onChange: (people: readonly PersonSaid[]) => void;
  /** Saving was tried: what is missing is said. */
  readonly tried?: boolean;
}

/** People by role, with a name where one is wanted. Keep with `peopleKept`, ask `peopleWhole` before. */
export function PeopleEntry({ label, hint, people, onChange, tried }: PeopleEntryProps) {
  return (
    <PeopleRows
      label={label}
      hint={hint}
      rows={people}
      onChange={onChange}
      tried={tried ?? false}
      add={w.people.add}
      empty={{ role: '' }}
    />
  );
}

interface PeopleRowsProps<T extends PersonSaid> {
  readonly label: string;
  readonly hint: ReactNode;
  readonly rows: readonly T[];
  readonly onChange: (rows: readonly T[]) => void;
  readonly tried: boolean;
  readonly add: string;
  /** What a new row holds. */
  readonly empty: T;
  /** What a row asks beside role and name. */
  readonly more?: (row: T, change: (patch: Partial<T>) => void) => ReactNode;
}

export function PeopleRows<T extends PersonSaid>(props: PeopleRowsProps<T>) {
  const { label, hint, rows, onChange, tried, add, empty, more } = props;
  const id = useId();
  const change = (at: number, patch: Partial<T>) =>
    onChange(rows.map((row, i) => (i === at ? { ...row, ...patch } : row)));
  return (
    <fieldset className="choice people" aria-describedby={hint ? id : undefined}>
      <legend>{label}</legend>
      {hint && (
        <p className="hint" id={id}>
          {hint}
        </p>
      )}
      {rows.map((row, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows are held by the form and have nothing else to be told apart by
        <fieldset className="people-row" key={i} aria-label={w.people.row(i + 1)}>
          <Field
            label={w.people.role}
            value={row.role}
            onChange={(role) => change(i, { role } as Partial<T>)}
            maxLength={100}
            error={tried && isStarted(row) && row.role.trim() === '' ? w.people.roleMissing : undefined}
          />
          <Field
            label={w.people.name}
            value={row.name ?? ''}
            onChange={(name) => change(i, { name } as Partial<T>)}
            maxLength={200}
            optional
          />
          {more?.(row, (patch) => change(i, patch))}
          <Button
            kind="quiet"
            icon={<CrossIcon />}
            aria-label={w.people.remove(i + 1, row.role.trim())}
            onClick={() => onChange(rows.filter((_, other) => other !== i))}
          />
        </fieldset>
      ))}
      <div className="row">
        <Button icon={<AddIcon />} onClick={() => onChange([...rows, empty])}>
          {add}
        </Button>
      </div>
    </fieldset>
  );
}
