import type { ReactNode } from 'react';
import { w } from '../../words';
import { Field } from './Field';
import { PeopleRows } from './PeopleEntry';
import { isStarted, type SignedSaid } from './peopleSaid';

export interface SignedEntryProps {
  readonly label: string;
  readonly hint?: ReactNode;
  readonly signed: readonly SignedSaid[];
  readonly onChange: (signed: readonly SignedSaid[]) => void;
  /** Day a new signature starts from. */
  readonly today: string;
  readonly tried?: boolean;
}

/** Who signed, in what role, on which day. Keep with `peopleKept`, ask `peopleWhole` before. */
export function SignedEntry({ label, hint, signed, onChange, today, tried = false }: SignedEntryProps) {
  return (
    <PeopleRows
      label={label}
      hint={hint}
      rows={signed}
      onChange={onChange}
      tried={tried}
      add={w.people.sign}
      empty={{ role: '', on: today }}
      more={(row, change) => (
        <Field
          label={w.people.on}
          kind="date"
          value={row.on}
          onChange={(on) => change({ on })}
          error={tried && isStarted(row) && row.on === '' ? w.people.dayMissing : undefined}
        />
      )}
    />
  );
}
