import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { AddIcon, Button, CrossIcon, Field } from '../parts';
import type { RefusedText } from './decisionDraft';

const words = w.decisions.form;

interface RefusedEntryProps {
  readonly rows: readonly RefusedText[];
  /** Options of the work that were not chosen. */
  readonly rest: readonly Thing<'option'>[];
  readonly tried: boolean;
  readonly onChange: (rows: readonly RefusedText[]) => void;
}

/** What was refused, each with its reason; the other options of the work by one touch. */
export function RefusedEntry({ rows, rest, tried, onChange }: RefusedEntryProps) {
  const set = (at: number, patch: Partial<RefusedText>) =>
    onChange(rows.map((row, i) => (i === at ? { ...row, ...patch } : row)));
  const open = rest.filter(({ thing }) => !rows.some(({ option }) => option === thing));
  return (
    <fieldset className="choice people">
      <legend>{words.refused}</legend>
      <p className="hint">{words.refusedHint}</p>
      {rows.map((row, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: rows are held by the form and have nothing else to be told apart by
        <fieldset className="people-row" key={i} aria-label={words.refusedRow(i + 1)}>
          <Field
            label={words.refusedWhat}
            value={row.what}
            onChange={(what) => set(i, { what })}
            maxLength={300}
            error={tried && row.what.trim() === '' && row.why.trim() !== '' ? words.refusedWhatMissing : undefined}
          />
          <Field
            label={words.refusedWhy}
            value={row.why}
            onChange={(why) => set(i, { why })}
            maxLength={1000}
            error={tried && row.what.trim() !== '' && row.why.trim() === '' ? words.refusedWhyMissing : undefined}
          />
          <Button
            kind="quiet"
            icon={<CrossIcon />}
            aria-label={words.refusedRemove(i + 1)}
            onClick={() => onChange(rows.filter((_, other) => other !== i))}
          />
        </fieldset>
      ))}
      <div className="row">
        {open.length > 0 && (
          <Button
            icon={<AddIcon />}
            onClick={() =>
              onChange([...rows, ...open.map(({ thing, body }) => ({ option: thing, what: body.title, why: '' }))])
            }
          >
            {words.refusedRest}
          </Button>
        )}
        <Button icon={<AddIcon />} onClick={() => onChange([...rows, { option: '', what: '', why: '' }])}>
          {words.refusedAdd}
        </Button>
      </div>
    </fieldset>
  );
}
