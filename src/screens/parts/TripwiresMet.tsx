import type { TripwireStanding } from '../../engine/watch';
import { date, type NameOfThing, tripwireText, w } from '../../words';
import { LinkButton } from './LinkButton';
import { Notice } from './Notice';

const words = w.decisions;

interface TripwiresMetProps {
  /** Those that wait for an answer. */
  readonly open: readonly TripwireStanding[];
  /** Titles of works and names of zones. */
  readonly names: NameOfThing;
  /** Where they are answered, on another screen. */
  readonly to?: string;
}

/** What would change a mind has come: a short word of it, where a person comes by. Nothing where nothing has. */
export function TripwiresMet({ open, names, to }: TripwiresMetProps) {
  const came = open.filter(({ word }) => word === 'met');
  const shown = came.length > 0 ? came : open;
  if (shown.length === 0) return null;
  return (
    <Notice
      kind="caution"
      title={came.length > 0 ? words.metTitle(String(came.length)) : words.metPerhaps}
      actions={to && <LinkButton to={to}>{words.metGo}</LinkButton>}
    >
      <ul>
        {shown.map(({ decision, tripwire, since }) => (
          <li key={`${decision.thing} ${tripwire.id}`}>
            {[decision.body.sculpture && names(decision.body.sculpture), tripwireText(tripwire, names)]
              .filter(Boolean)
              .join(': ')}{' '}
            <span className="soft">({words.wireOn(date(since ?? ''))})</span>
          </li>
        ))}
      </ul>
    </Notice>
  );
}
