import { type ChangeEvent, useEffect, useRef, useState } from 'react';
import { bagSize, photosFound } from '../../actions';
import { sayReason, w } from '../../words';
import { Button, Notice, Progress } from '../parts';
import { say, useDesk, useQuestion } from '../shell';

const words = w.carry;

/** Photos spoken of whose bytes are not here, looked for among picture files; nothing where none is missing. */
export function MissingPhotos() {
  const desk = useDesk();
  const missing = useQuestion(bagSize(desk))?.missing ?? 0;
  const [placed, setPlaced] = useState(0);
  const [far, setFar] = useState<{ readonly done: number; readonly all: number }>();
  const [said, setSaid] = useState('');
  const [fault, setFault] = useState('');
  const picker = useRef<HTMLInputElement>(null);
  const leaving = useRef(new AbortController());
  useEffect(() => () => leaving.current.abort(), []);
  const waiting = Math.max(0, missing - placed);
  if (waiting === 0 && said === '') return null;

  const look = async (e: ChangeEvent<HTMLInputElement>) => {
    const files = [...(e.target.files ?? [])];
    e.target.value = '';
    if (files.length === 0) return;
    leaving.current = new AbortController();
    setFault('');
    setFar({ done: 0, all: files.length });
    const outcome = await photosFound(desk, files, {
      signal: leaving.current.signal,
      heard: (done, all) => setFar({ done, all }),
    });
    setFar(undefined);
    if (!outcome.ok) return setFault(sayReason(outcome.reason));
    setPlaced(placed + outcome.placed);
    setSaid(words.found(outcome.placed, outcome.passedOver));
    say(words.found(outcome.placed, outcome.passedOver));
  };
  return (
    <div className="stack">
      <h3>{words.missingTitle}</h3>
      {waiting > 0 && <p>{words.missing(waiting)}</p>}
      <input
        ref={picker}
        type="file"
        multiple
        className="unseen"
        tabIndex={-1}
        accept="image/*"
        aria-label={words.lookFor}
        onChange={look}
      />
      {far ? (
        <Progress label={words.lookingFor} {...far} onCancel={() => leaving.current.abort()} />
      ) : (
        waiting > 0 && (
          <div className="row">
            <Button onClick={() => picker.current?.click()}>{words.lookFor}</Button>
          </div>
        )
      )}
      {said !== '' && !far && <p role="status">{said}</p>}
      {fault && <Notice kind="problem" title={fault} />}
    </div>
  );
}
