import type { Gate } from '../../engine/weather';
import { measureNumber, sayReason, w } from '../../words';
import { CautionIcon, StopIcon, TickIcon } from '../parts';

const words = w.careDay;
const pictures = { go: TickIcon, wait: CautionIcon, 'not today': StopIcon } as const;

/** The word alone, at the foot, in view while the numbers are stepped; it is read out where it is explained. */
export function GateWord({ gate }: { readonly gate: Gate }) {
  const Picture = pictures[gate.says];
  return (
    <p className="gate-word grow" aria-hidden="true">
      <Picture />
      <span>{words.says[gate.says]}</span>
    </p>
  );
}

/** Go, wait or not today, in a word that is read at arm's length, with what it rests on. */
export function GateAnswer({ gate }: { readonly gate: Gate | undefined }) {
  if (!gate)
    return (
      <div className="gate" role="status">
        <p>{words.readFirst}</p>
      </div>
    );
  const Picture = pictures[gate.says];
  const { value, low, high } = gate.margin;
  return (
    <div className={`gate ${gate.says.replace(' ', '-')}`} role="status">
      <p className="gate-word">
        <Picture />
        <span>{words.says[gate.says]}</span>
      </p>
      <dl className="gate-figures figures">
        <div>
          <dt>{words.point[gate.dewPoint.frost ? 'frost' : 'dew']}</dt>
          <dd>{words.celsius(measureNumber('temperature', gate.dewPoint.celsius, 1))}</dd>
        </div>
        <div>
          <dt>{words.margin}</dt>
          <dd>
            {words.kelvin(measureNumber('difference', value, 1))}
            <span className="soft line-detail">
              {words.marginRange(measureNumber('difference', low, 1), measureNumber('difference', high, 1))}
            </span>
          </dd>
        </div>
      </dl>
      <ul>
        {gate.reasons.map((reason) => (
          <li key={reason.code}>{sayReason(reason)}</li>
        ))}
      </ul>
    </div>
  );
}
