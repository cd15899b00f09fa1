import type { Point } from '../../engine/photo';
import { verdictShapes } from '../parts/VerdictMark';
import type { KeyRow } from './shading/shading';

interface ZoneLetterProps {
  readonly letter: string;
  /** Units of the drawing. */
  readonly at: Point;
  readonly room: number;
  /** Units to a pixel. */
  readonly unit: number;
  readonly mark?: KeyRow['mark'];
  readonly strong?: boolean;
}

const largest = 17;
const smallest = 11;

/** Half the height of a letter's badge in pixels: as large as the zone has room for, never too small to read. */
export const badgeHalf = (room: number, unit: number): number =>
  Math.max(smallest, Math.min(largest, (room / unit) * 0.8));

/** The letter of a zone on paper of its own, readable over any photo; beside it the shape of what changed. */
export function ZoneLetter({ letter, at: [x, y], room, unit, mark, strong = false }: ZoneLetterProps) {
  const half = badgeHalf(room, unit) * unit;
  const letters = [...letter].length;
  const wide = Math.max(half, half * (0.35 + 0.45 * letters));
  const shape = (half * 1.5) / 24;
  const left = x - wide - (mark ? half : 0);
  const width = 2 * wide + (mark ? 2 * half : 0);
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a drawn group takes no focus; the zone under it has its name
    <g className={strong ? 'map-letter strong' : 'map-letter'} aria-hidden="true">
      <rect x={left} y={y - half} width={width} height={2 * half} rx={half} strokeWidth={unit * (strong ? 3 : 1.5)} />
      <text x={left + wide} y={y + half * 0.42} fontSize={half * (letters > 2 ? 1.05 : 1.2)}>
        {letter}
      </text>
      {mark && (
        <path
          className="map-mark"
          d={verdictShapes[mark.verdict]}
          strokeWidth={mark.clearly ? 3.6 : 2.2}
          transform={`translate(${left + 2 * wide - half * 0.25} ${y - half * 0.75}) scale(${shape})`}
        />
      )}
    </g>
  );
}
