import type { ReactNode } from 'react';
import { w } from '../../words';
import { Field } from './Field';
import { PeopleRows } from './PeopleEntry';
import type { HoursSaid } from './peopleSaid';

interface HoursEntryProps {
  readonly label: string;
  readonly hint?: ReactNode;
  readonly people: readonly HoursSaid[];
  readonly onChange: (people: readonly HoursSaid[]) => void;
  /** Saving was tried: what is missing is said. */
  readonly tried: boolean;
  /** Some hours are no number. */
  readonly wrong: boolean;
}

/** Who was at work, in what role, and for how long. */
export function HoursEntry({ label, hint, people, onChange, tried, wrong }: HoursEntryProps) {
  return (
    <PeopleRows
      label={label}
      hint={hint}
      rows={people}
      onChange={onChange}
      tried={tried}
      add={w.people.add}
      empty={{ role: '', hours: '' }}
      more={(row, change) => (
        <Field
          label={w.people.hours}
          takes="hours"
          short
          optional
          value={row.hours}
          onChange={(hours) => change({ hours })}
          maxLength={20}
          error={tried && wrong ? w.people.hoursWrong : undefined}
        />
      )}
    />
  );
}
