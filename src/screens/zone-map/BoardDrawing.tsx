import { useMemo } from 'react';
import type { MapDraft, Side, ZoneMap } from '../../actions';
import type { Outline, Point, Size } from '../../engine/photo';
import type { Thing } from '../../engine/record';
import { stagePath, stagePoint } from '../parts';
import { Arrows } from './Arrows';
import { placedZones } from './placed';
import { useStageUnit } from './stageUnit';
import { ZoneLetters } from './ZoneLetters';

interface BoardDrawingProps {
  readonly side: Side;
  readonly zones: readonly Thing<'zone'>[];
  readonly size: Size;
  readonly draft: MapDraft | null;
  readonly chosen: string | undefined;
  readonly runOffs: ZoneMap['runOffs'];
}

/** What is drawn so far, and what is being drawn. */
export function BoardDrawing({ side, zones, size, draft, chosen, runOffs }: BoardDrawingProps) {
  const { ref, unit } = useStageUnit();
  const busy = draft && 'zone' in draft ? draft.zone : undefined;
  const placed = useMemo(() => placedZones(zones, side.outlines, size), [zones, side.outlines, size]);
  const lit = draft?.doing === 'water' ? draft.from : chosen;
  /** What was drawn of zones that were split or joined since: a guide to those they became. */
  const ended = side.outlines.filter((one) => !zones.some(({ thing }) => thing === one.zone));
  const scale = side.elevation.body.scale;
  return (
    <g ref={ref} className={draft?.doing === 'outline' || draft?.doing === 'corners' ? 'board busy' : 'board'}>
      {ended.map(({ thing, outline }) => (
        <path
          key={thing.thing}
          className="board-ended"
          d={stagePath(outline, size)}
          strokeWidth={2 * unit}
          strokeDasharray={`${3 * unit} ${5 * unit}`}
        />
      ))}
      {placed.map(({ zone, path }) =>
        // The outline being drawn anew stands in its new shape only.
        zone.thing === busy ? null : (
          <g key={zone.thing} className={zone.thing === lit ? 'board-zone chosen' : 'board-zone'}>
            <path className="map-under" d={path} strokeWidth={5 * unit} />
            <path className="board-line" d={path} strokeWidth={(zone.thing === lit ? 3.5 : 2) * unit} />
          </g>
        ),
      )}
      {draft?.doing === 'water' && <Arrows runOffs={runOffs} placed={placed} unit={unit} />}
      {scale && draft === null && <Length ends={[scale.a, scale.b]} size={size} unit={unit} quiet />}
      {placed.map(({ zone, letters }) =>
        zone.thing === busy ? null : (
          <ZoneLetters
            key={zone.thing}
            letter={zone.body.letter}
            places={letters}
            unit={unit}
            strong={zone.thing === lit}
          />
        ),
      )}
      {draft?.doing === 'scale' && <Length ends={draft.ends} size={size} unit={unit} />}
      {draft?.doing === 'outline' && (
        <>
          <Closed outline={draft.closed} size={size} unit={unit} />
          <Corners ring={draft.corners} size={size} unit={unit} at={draft.corners.length - 1} />
        </>
      )}
      {draft?.doing === 'corners' && (
        <>
          <Closed outline={draft.outline} size={size} unit={unit} />
          {draft.outline.map((ring, i) => (
            <Corners
              // biome-ignore lint/suspicious/noArrayIndexKey: a piece is its place in the outline and nothing else
              key={i}
              ring={ring}
              size={size}
              unit={unit}
              at={draft.at?.ring === i ? draft.at.corner : undefined}
              bare
            />
          ))}
        </>
      )}
    </g>
  );
}

interface PartProps {
  readonly size: Size;
  readonly unit: number;
}

function Closed({ outline, size, unit }: PartProps & { readonly outline: Outline }) {
  if (outline.length === 0) return null;
  const d = stagePath(outline, size);
  return (
    <g className="board-closed">
      <path className="map-under" d={d} strokeWidth={6 * unit} />
      <path className="board-line" d={d} strokeWidth={3 * unit} />
    </g>
  );
}

/** From so many corners on they are drawn small, or they would lie on each other. */
const crowded = 60;

interface CornersProps extends PartProps {
  readonly ring: readonly Point[];
  /** The corner that is held, or was put last. */
  readonly at: number | undefined;
  /** Without the line between them. */
  readonly bare?: boolean;
}

function Corners({ ring, size, unit, at, bare = false }: CornersProps) {
  const points = ring.map((corner) => stagePoint(corner, size));
  const [first, last] = [points[0], points.at(-1)];
  const line = points.length > 0 ? `M${points.map((p) => p.join(' ')).join('L')}` : '';
  return (
    <g className="board-corners">
      {!bare && points.length > 1 && (
        <>
          <path className="map-under" d={line} strokeWidth={6 * unit} />
          <path className="board-line" d={line} strokeWidth={3 * unit} />
        </>
      )}
      {!bare && points.length > 2 && first && last && (
        <path
          className="board-line"
          d={`M${last.join(' ')}L${first.join(' ')}`}
          strokeWidth={2 * unit}
          strokeDasharray={`${6 * unit} ${5 * unit}`}
        />
      )}
      {points.map(([x, y], i) => (
        <circle
          // biome-ignore lint/suspicious/noArrayIndexKey: a corner is its place in the ring and nothing else
          key={i}
          className={i === at ? 'board-corner held' : 'board-corner'}
          cx={x}
          cy={y}
          r={(i === at ? 9 : points.length > crowded ? 3 : 6) * unit}
          strokeWidth={(i !== at && points.length > crowded ? 1.5 : 2) * unit}
        />
      ))}
    </g>
  );
}

interface LengthProps extends PartProps {
  readonly ends: readonly Point[];
  readonly quiet?: boolean;
}

/** A length with a stroke across each end, as on a drawing to scale. */
function Length({ ends, size, unit, quiet = false }: LengthProps) {
  const [a, b] = ends.map((end) => stagePoint(end, size));
  if (!a) return null;
  const [dx, dy] = b ? [b[0] - a[0], b[1] - a[1]] : [0, 1];
  const far = Math.hypot(dx, dy) || 1;
  const half = 10 * unit;
  const [nx, ny] = [(-dy / far) * half, (dx / far) * half];
  const across = ([x, y]: Point): string => `M${x - nx} ${y - ny}L${x + nx} ${y + ny}`;
  const d = b ? `M${a.join(' ')}L${b.join(' ')}${across(a)}${across(b)}` : across(a);
  return (
    <g className={quiet ? 'board-length quiet' : 'board-length'}>
      <path className="map-under" d={d} strokeWidth={6 * unit} />
      <path className="board-line" d={d} strokeWidth={(quiet ? 2 : 3) * unit} />
    </g>
  );
}
