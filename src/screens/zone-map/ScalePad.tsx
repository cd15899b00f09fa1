import { useState } from 'react';
import { keepScaleDrawn, type MapDraft } from '../../actions';
import type { Thing } from '../../engine/record';
import { typedMeasure, w } from '../../words';
import { Button, Field, Notice, UndoIcon } from '../parts';
import { say, useDeed, useDesk, useTyped } from '../shell';
import type { ChangeDraft } from './DraftPad';
import { takenBack } from './drawn';

const words = w.zoneMap.outline;

interface ScalePadProps {
  readonly draft: Extract<MapDraft, { doing: 'scale' }>;
  readonly elevation: Thing<'elevation'>;
  readonly onChange: ChangeDraft;
  readonly onLeave: () => void;
}

/** Two ends touched, and how long it is between them on the work. */
export function ScalePad({ draft, elevation, onChange, onLeave }: ScalePadProps) {
  const desk = useDesk();
  const [length, setLength] = useState('');
  const [wrong, setWrong] = useState(false);
  const typed = useTyped(['scale', undefined, elevation.thing], { length: [length, setLength] });
  const { run, refused } = useDeed(typed);
  const { ends } = draft;
  const keep = () => {
    const metres = typedMeasure('length', length);
    setWrong(metres === undefined);
    if (metres !== undefined)
      void run(
        () => keepScaleDrawn(desk, elevation.thing, metres),
        () => say(words.scaleKept),
      );
  };
  return (
    <>
      {typed.line}
      {refused && <Notice kind="problem" title={refused} />}
      {ends.length < 2 ? (
        <p role="status">{ends.length === 0 ? words.scaleHow : words.scaleSecond}</p>
      ) : (
        <Field
          label={words.scaleLength}
          takes="length"
          short
          value={length}
          onChange={setLength}
          error={wrong ? words.notALength : undefined}
        />
      )}
      <div className="row by-hand">
        <Button size="round" onClick={onLeave}>
          {words.leave}
        </Button>
        <Button
          size="round"
          icon={<UndoIcon />}
          disabled={ends.length === 0}
          onClick={() => onChange((now) => now && takenBack(now))}
        >
          {words.scaleAgain}
        </Button>
        {ends.length === 2 && (
          <Button size="round" kind="main" onClick={keep}>
            {words.scaleKeep}
          </Button>
        )}
      </div>
    </>
  );
}
