import type { Point, Size } from '../../engine/photo';
import { stagePoint } from '../parts';

interface PairMarksProps {
  readonly places: readonly Point[];
  readonly chosen: number | undefined;
  /** The end that waits for the other. */
  readonly next: Point | undefined;
  readonly size: Size;
}

/** A cross that leaves its middle open, with its number; drawn pale over dark so that it shows on any picture. */
export function PairMarks({ places, chosen, next, size }: PairMarksProps) {
  const all = next ? [...places, next] : places;
  return all.map((place, i) => {
    const [x, y] = stagePoint(place, size);
    const cross = `M${x - 26} ${y}h18M${x + 8} ${y}h18M${x} ${y - 26}v18M${x} ${y + 8}v18`;
    const waits = i === places.length;
    return (
      // biome-ignore lint/suspicious/noArrayIndexKey: a pair is its number and nothing else
      <g key={i} className={i === chosen || waits ? 'pair-mark chosen' : 'pair-mark'}>
        <path className="under" d={cross} />
        <path d={cross} />
        {(i === chosen || waits) && <circle cx={x} cy={y} r={34} />}
        <text x={x > 900 ? x - 16 : x + 16} y={y < 60 ? y + 52 : y - 16} textAnchor={x > 900 ? 'end' : 'start'}>
          {i + 1}
        </text>
      </g>
    );
  });
}
