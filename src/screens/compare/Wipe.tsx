import { useId, useState } from 'react';
import type { PhotoFit } from '../../engine/photo';
import { share, w } from '../../words';
import { Button, PhotoStage, stageHeight, stageWidth } from '../parts';
import { LaidPhoto } from './LaidPhoto';
import type { Looked } from './looked';

const words = w.compare;
/** One touch of a button moves the edge by this share of the width. */
const step = 0.1;

interface WipeProps {
  readonly earlier: Looked;
  readonly later: Looked;
  readonly fit: PhotoFit;
}

/** The earlier photo on the left of an edge, the later on its right; the edge is moved by buttons, keys or a touch on its bar. */
export function Wipe({ earlier, later, fit }: WipeProps) {
  const [at, setAt] = useState(0.5);
  const clip = useId();
  const bar = useId();
  const height = stageHeight(later.size);
  const move = (by: number) => setAt(Math.min(1, Math.max(0, Math.round((at + by) * 100) / 100)));
  return (
    <figure className="stack tight">
      <div className="row compare-sides">
        <span className="strong">← {earlier.name}</span>
        <span className="strong">{later.name} →</span>
      </div>
      <PhotoStage url={later.url} alt={later.alt} size={later.size}>
        <clipPath id={clip}>
          <rect x={0} y={0} width={at * stageWidth} height={height} />
        </clipPath>
        <g clipPath={`url(#${clip})`}>
          <LaidPhoto photo={earlier} fit={fit} ontoSize={later.size} />
        </g>
        <path className="wipe-edge under" d={`M${at * stageWidth} 0V${height}`} />
        <path className="wipe-edge" d={`M${at * stageWidth} 0V${height}`} />
      </PhotoStage>
      <div className="wipe-bar not-printed">
        <label htmlFor={bar}>{words.wipe}</label>
        <div className="row">
          <Button disabled={at === 0} aria-label={words.wipeLess} onClick={() => move(-step)}>
            <span aria-hidden="true">←</span>
          </Button>
          <input
            id={bar}
            className="grow"
            type="range"
            min={0}
            max={100}
            value={Math.round(at * 100)}
            aria-valuetext={words.wipeAt(share(at))}
            onChange={(e) => setAt(Number(e.target.value) / 100)}
          />
          <Button disabled={at === 1} aria-label={words.wipeMore} onClick={() => move(step)}>
            <span aria-hidden="true">→</span>
          </Button>
        </div>
      </div>
    </figure>
  );
}
