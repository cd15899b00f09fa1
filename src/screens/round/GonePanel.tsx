import { w } from '../../words';
import { usePad } from './PadContext';
import { kindName } from './said';
import { Tile } from './Tiles';

const words = w.round;

/** "Nothing found" on a zone that held something: each earlier finding is gone, or still there. */
export function GonePanel() {
  const { view, touch } = usePad();
  const earlier = view.draft.findings.filter((f) => f.earlier);
  return (
    <fieldset className="pad-group" aria-label={words.ask.goneEach}>
      <p className="pad-group-label" aria-hidden="true">
        {words.ask.goneEach}
      </p>
      {earlier.map((f) => (
        <fieldset className="gone-row" key={f.key} aria-label={kindName(f.kind)}>
          <p className="finding-name">{kindName(f.kind)}</p>
          <div className="pad-tiles">
            <Tile
              label={words.ask.isGone}
              name={`${kindName(f.kind)}: ${words.ask.isGone}`}
              pressed={f.gone === true}
              strong
              onTouch={() => touch({ do: 'gone', key: f.key })}
            />
            <Tile
              label={words.ask.there}
              name={`${kindName(f.kind)}: ${words.ask.there}`}
              strong
              onTouch={() => touch({ do: 'open', key: f.key })}
            />
          </div>
        </fieldset>
      ))}
    </fieldset>
  );
}
