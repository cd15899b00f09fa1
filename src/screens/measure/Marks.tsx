import type { Outline, Point, Ring, Size } from '../../engine/photo';
import { stagePath, stagePoint } from '../parts';

interface OutlineMarksProps {
  readonly outline: Outline;
  readonly size: Size;
  readonly as: 'part' | 'patch' | 'piece';
}

/** Drawn twice, dark under pale, so that it shows on any picture. Patches are hatched besides. */
export function OutlineMarks({ outline, size, as }: OutlineMarksProps) {
  if (outline.length === 0) return null;
  const d = stagePath(outline, size);
  return (
    <g className={`mark-${as}`}>
      <path className="mark-under" d={d} />
      <path className="mark-over" d={d} />
    </g>
  );
}

interface CornerMarksProps {
  readonly corners: Ring;
  readonly chosen: number;
  readonly size: Size;
}

/** An open piece: its line so far, a ring at each corner, a full one at the corner that is chosen. */
export function CornerMarks({ corners, chosen, size }: CornerMarksProps) {
  if (corners.length === 0) return null;
  const at = corners.map((corner) => stagePoint(corner, size));
  const d = `M${at.map((p) => p.join(' ')).join('L')}`;
  return (
    <g className="mark-open">
      <path className="mark-under" d={d} />
      <path className="mark-over" d={d} />
      {at.map(([x, y], i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a corner is its place in the line and nothing else
        <circle key={i} className={i === chosen ? 'mark-corner chosen' : 'mark-corner'} cx={x} cy={y} r={9} />
      ))}
    </g>
  );
}

interface SpotMarkProps {
  readonly at: Point;
  readonly size: Size;
  readonly as: 'now' | 'y' | 'n' | 'g' | 'open' | 'sound';
}

/** A dot on the whole picture: the one that is asked large, those judged by their shape as well as their colour. */
export function SpotMark({ at, size, as }: SpotMarkProps) {
  const [x, y] = stagePoint(at, size);
  if (as === 'n' || as === 'sound') return <path className={`spot spot-${as}`} d={`M${x - 9} ${y}h18`} />;
  if (as === 'g') return <path className="spot spot-g" d={`M${x - 9} ${y - 9}l18 18M${x - 9} ${y + 9}l18 -18`} />;
  return <circle className={`spot spot-${as}`} cx={x} cy={y} r={as === 'now' ? 32 : as === 'open' ? 4 : 9} />;
}
