import type { ReactNode } from 'react';
import type { ReadyCode, ReadyLine } from '../../actions';
import { w } from '../../words';
import { Button, LinkButton } from '../parts';
import { pathTo } from '../shell';

const words = w.ready;

interface LineProps {
  readonly line: ReadyLine;
  readonly onPromise: () => void;
}

/** What was looked at, what was found, and what to do where something is. */
export function Line({ line, onPromise }: LineProps) {
  const { about, state, code, params } = line;
  const act = actOn(code, onPromise);
  return (
    <li className={`ready-line ${state}`}>
      <Mark state={state} />
      <div className="stack tight">
        <p>
          <span className="strong">{words.about[about]}.</span>{' '}
          <span className="ready-state">{words.state[state]}.</span>
        </p>
        <p>{words.found[code](params)}</p>
        {act && <div className="row">{act}</div>}
      </div>
    </li>
  );
}

const actOn = (code: ReadyCode, onPromise: () => void): ReactNode => {
  switch (code) {
    case 'promise: no':
      return <Button onClick={onPromise}>{words.act.promise}</Button>;
    case 'room: full':
      return <LinkButton to={pathTo.keeping()}>{words.act.room}</LinkButton>;
    case 'elsewhere: never':
    case 'elsewhere: behind':
      return <LinkButton to={pathTo.carry()}>{words.act.carry}</LinkButton>;
    case 'person: nobody set':
    case 'person: nobody named':
    case 'round: of another':
      return <LinkButton to={pathTo.settings()}>{words.act.person}</LinkButton>;
    case 'round: open':
      return <LinkButton to={pathTo.sculptures()}>{words.act.round}</LinkButton>;
    default:
      return undefined;
  }
};

/** A tick, an exclamation, a question: told apart in grey and in the sun. */
const shapes: Readonly<Record<ReadyLine['state'], string>> = {
  ok: 'M5 13l5 5L20 7',
  look: 'M12 4v10M12 18.5v1',
  unknown: 'M8 9a4 4 0 118 0c0 3-4 3-4 6M12 18.5v1',
};

function Mark({ state }: { readonly state: ReadyLine['state'] }) {
  return (
    <svg className="ready-mark" width="32" height="32" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={shapes[state]} />
    </svg>
  );
}
