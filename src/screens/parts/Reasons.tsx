import type { Reason } from '../../engine/record';
import { type NameOfThing, sayReason } from '../../words';
import './reasons.css';

interface ReasonsProps {
  readonly reasons: readonly Reason[];
  readonly nameOf?: NameOfThing;
  readonly label?: string;
}

/** Reasons as sentences, each said once. */
export function Reasons({ reasons, nameOf, label }: ReasonsProps) {
  const said = [...new Set(reasons.map((reason) => sayReason(reason, nameOf)))];
  if (said.length === 0) return null;
  return (
    <ul className="reasons" aria-label={label}>
      {said.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
