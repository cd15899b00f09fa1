import { readTimeOfDay } from '../../engine/numerals';
import type { Thing } from '../../engine/record';
import { unitOf, w } from '../../words';
import { Choice, Field } from '../parts';
import { Fold } from '../parts/Fold';
import { Select } from '../parts/Select';
import type { AirDraft } from './airDraft';
import { NumberSteps } from './NumberSteps';

const words = w.careDay;
const befores = ['wash', 'wax', 'other'] as const;
const dryFor = ['24', '12', '6', '0', 'unknown'] as const;

interface AirEntryProps {
  readonly draft: AirDraft;
  readonly onChange: (draft: AirDraft) => void;
  readonly tins: readonly Thing<'product'>[];
  readonly tin: string;
  readonly onTin: (tin: string) => void;
  /** What was read last, where the steps start. */
  readonly last: Thing<'weather'>['body'] | undefined;
  /** Day and time in place of now, or undefined. */
  readonly earlier: { readonly day: string; readonly time: string };
  readonly onEarlier: (earlier: { readonly day: string; readonly time: string }) => void;
}

/** Air, humidity, surface, and how long it has been dry. */
export function AirEntry({ draft, onChange, tins, tin, onTin, last, earlier, onEarlier }: AirEntryProps) {
  const set =
    <K extends keyof AirDraft>(key: K) =>
    (value: AirDraft[K]) =>
      onChange({ ...draft, [key]: value });
  return (
    <div className="stack air-entry">
      <Choice
        label={words.before}
        size="round"
        tiles="narrow"
        options={befores.map((value) => ({ value, label: words.befores[value] }))}
        value={draft.before}
        onChange={set('before')}
      />
      {draft.before !== 'wash' && tins.length > 0 && (
        <Select
          label={words.product}
          value={tin}
          onChange={onTin}
          options={[
            { value: '', label: words.productNone },
            ...tins.map(({ thing, body }) => ({ value: thing, label: words.productIn(body.name, body.batch ?? '') })),
          ]}
        />
      )}
      <NumberSteps
        what="air"
        label={words.air}
        unit={unitOf('temperature')}
        value={draft.air}
        from={last?.air}
        onChange={set('air')}
      />
      <NumberSteps
        what="humidity"
        label={words.humidity}
        unit="%"
        value={draft.humidity}
        from={last?.humidity}
        onChange={set('humidity')}
      />
      <NumberSteps
        what="surface"
        label={words.surface}
        hint={words.surfaceHint}
        unit={unitOf('temperature')}
        value={draft.surface}
        from={last?.surface}
        onChange={set('surface')}
      />
      {draft.before !== 'wash' && (
        <Choice
          label={words.dry}
          size="round"
          tiles="narrow"
          options={dryFor.map((value) => ({ value, label: words.dryFor[value] }))}
          value={draft.dry}
          onChange={set('dry')}
        />
      )}
      <Fold show={words.earlier} hide={words.earlierHide} alsoOnPaper>
        <div className="row">
          <Field
            label={words.day}
            kind="date"
            short
            value={earlier.day}
            onChange={(day) => onEarlier({ ...earlier, day })}
          />
          <Field
            label={words.time}
            short
            value={earlier.time}
            onChange={(time) => onEarlier({ ...earlier, time })}
            maxLength={12}
            error={earlier.time.trim() !== '' && !readTimeOfDay(earlier.time) ? words.timeWrong : undefined}
          />
        </div>
      </Fold>
    </div>
  );
}
