import { useEffect, useState } from 'react';
import type { PhotoFit } from '../../engine/photo';
import { date, w } from '../../words';
import { Button, PhotoStage } from '../parts';
import { LaidPhoto } from './LaidPhoto';
import type { Looked } from './looked';

const words = w.compare;
/** Milliseconds each photo is shown: slow enough to look, and far under three flashes a second (WCAG 2.2, 2.3.1). */
const eachFor = 900;

interface BlinkProps {
  readonly earlier: Looked;
  readonly later: Looked;
  readonly fit: PhotoFit;
}

const avoidsMotion = (): boolean =>
  typeof window.matchMedia === 'function' && window.matchMedia('(prefers-reduced-motion: reduce)').matches;

/** The two by turns in one place: what changed moves, what did not stands still. */
export function Blink({ earlier, later, fit }: BlinkProps) {
  const [shown, setShown] = useState<'earlier' | 'later'>('later');
  const [running, setRunning] = useState(false);
  const still = avoidsMotion();
  useEffect(() => {
    if (!running) return;
    const timer = setInterval(() => setShown((now) => (now === 'later' ? 'earlier' : 'later')), eachFor);
    return () => clearInterval(timer);
  }, [running]);
  const other = shown === 'later' ? 'earlier' : 'later';
  const turn = () => {
    setRunning(false);
    setShown(other);
  };
  const { row, alt } = shown === 'later' ? later : earlier;
  return (
    <figure className="stack tight">
      <figcaption className="strong">{words.blinkShown(shown, date(row.day))}</figcaption>
      <PhotoStage
        url={later.url}
        alt={alt}
        size={later.size}
        controls={
          <>
            {!still && (
              <Button onClick={() => setRunning(!running)}>{running ? words.blinkStop : words.blinkStart}</Button>
            )}
            <Button kind="main" onClick={turn}>
              {words.blinkTo(other)}
            </Button>
          </>
        }
      >
        {/* Always there, so that the first turn is as quick as the rest. */}
        <g visibility={shown === 'earlier' ? 'visible' : 'hidden'}>
          <rect className="laid-ground" width="100%" height="100%" />
          <LaidPhoto photo={earlier} fit={fit} ontoSize={later.size} />
        </g>
      </PhotoStage>
      {still && <p className="soft small not-printed">{words.blinkStill}</p>}
    </figure>
  );
}
