import { tripwireSortOf, tripwireSorts } from '../../engine/watch';
import { measureNumber, number, unitOf, w } from '../../words';
import { AddIcon, Button, CrossIcon, Field } from '../parts';
import { Select } from '../parts/Select';
import { newWire, type WireText, wireFaults } from './decisionDraft';

const words = w.decisions.form;

interface WiresEntryProps {
  readonly wires: readonly WireText[];
  /** Living zones of the work, with their names; none where it is of the whole collection. */
  readonly zones: readonly { readonly value: string; readonly label: string }[];
  readonly tried: boolean;
  readonly newId: () => string;
  readonly onChange: (wires: readonly WireText[]) => void;
}

/** What would change a mind, row by row: what comes, where, from which level on. */
export function WiresEntry({ wires, zones, tried, newId, onChange }: WiresEntryProps) {
  const sorts = tripwireSorts.filter(({ zone }) => zone === 'none' || zones.length > 0);
  const set = (at: number, patch: Partial<WireText>) =>
    onChange(wires.map((wire, i) => (i === at ? { ...wire, ...patch } : wire)));
  return (
    <fieldset className="choice people">
      <legend>{words.wires}</legend>
      <p className="hint">{words.wiresHint}</p>
      {zones.length === 0 && <p className="soft">{words.wireNoZones}</p>}
      {wires.map((wire, i) => (
        <WireRow
          key={wire.id}
          n={i + 1}
          wire={wire}
          zones={zones}
          sorts={sorts.map(({ id }) => id)}
          tried={tried}
          onChange={(patch) => set(i, patch)}
          onRemove={() => onChange(wires.filter((_, other) => other !== i))}
        />
      ))}
      <div className="row">
        <Button
          icon={<AddIcon />}
          onClick={() => onChange([...wires, newWire(newId(), zones.length > 0 ? 'hold over' : 'day comes')])}
        >
          {words.wireAdd}
        </Button>
      </div>
    </fieldset>
  );
}

interface WireRowProps {
  readonly n: number;
  readonly wire: WireText;
  readonly zones: WiresEntryProps['zones'];
  readonly sorts: readonly string[];
  readonly tried: boolean;
  readonly onChange: (patch: Partial<WireText>) => void;
  readonly onRemove: () => void;
}

function WireRow({ n, wire, zones, sorts, tried, onChange, onRemove }: WireRowProps) {
  const row = tripwireSortOf(wire.sort);
  const faults = wireFaults(wire);
  const missing = (field: 'zone' | 'level' | 'times' | 'by', say: string) =>
    tried && faults.has(field) ? say : undefined;
  const anywhere = row?.zone === 'any' ? [{ value: '', label: w.decisions.anyZone }] : [{ value: '', label: '–' }];
  const known = sorts.includes(wire.sort) ? sorts : [...sorts, wire.sort];
  return (
    <fieldset className="wire-row" aria-label={words.wireRow(n)}>
      <Select
        label={words.wireSort}
        value={wire.sort}
        onChange={(sort) => onChange({ ...newWire(wire.id, sort), zone: wire.zone })}
        options={known.map((id) => ({ value: id, label: w.decisions.wireSort[id] ?? w.decisions.unknownWire(id) }))}
      />
      {row && row.zone !== 'none' && (
        <Select
          label={words.wireZone}
          value={wire.zone}
          onChange={(zone) => onChange({ zone })}
          options={[...anywhere, ...zones]}
        />
      )}
      {missing('zone', words.wireZoneMissing) && <p className="field-error">{words.wireZoneMissing}</p>}
      {row?.unit && (
        <Field
          label={words.wireLevel}
          takes={row.unit === 'm2' ? 'area' : 'number'}
          value={wire.level}
          onChange={(level) => onChange({ level })}
          unit={row.unit === 'm2' ? unitOf('area') : (w.decisions.units[row.unit] ?? '')}
          short
          error={missing(
            'level',
            words.wireLevelMissing(
              ...([row.least ?? 0, row.most ?? 0].map((level) =>
                row.unit === 'm2' ? measureNumber('area', level) : number(level),
              ) as [string, string]),
            ),
          )}
        />
      )}
      {row?.seasons && (
        <Field
          label={words.wireTimes}
          kind="number"
          value={wire.times}
          onChange={(times) => onChange({ times })}
          short
          error={missing('times', words.wireTimesMissing)}
        />
      )}
      {row?.day && (
        <Field
          label={words.wireDay}
          kind="date"
          value={wire.by}
          onChange={(by) => onChange({ by })}
          short
          error={missing('by', words.dayMissing)}
        />
      )}
      <Button kind="quiet" icon={<CrossIcon />} aria-label={words.wireRemove(n)} onClick={onRemove} />
    </fieldset>
  );
}
