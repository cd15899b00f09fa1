import type { Point } from '../../engine/photo';
import { verdictShapes } from '../parts/VerdictMark';
import type { KeyRow } from './shading/shading';

interface Place {
  /** Units of the drawing. */
  readonly at: Point;
  readonly room: number;
}

interface ZoneLettersProps {
  readonly letter: string;
  /** One a piece of the zone. */
  readonly places: readonly Place[];
  /** Units to a pixel. */
  readonly unit: number;
  readonly mark?: KeyRow['mark'];
  readonly strong?: boolean;
}

/** Half the height of a badge in pixels: as large as the zone has room for, never too small to read. */
const largest = 17;
const smallest = 11;

/** The letter of a zone on paper of its own, readable over any photo; beside it the shape of what changed. */
export function ZoneLetters({ letter, places, unit, mark, strong = false }: ZoneLettersProps) {
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a drawn group takes no focus; the zone under it has its name
    <g className={strong ? 'map-letter strong' : 'map-letter'} aria-hidden="true">
      {places.map((place, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a piece is its place in the outline and nothing else
        <Badge key={i} letter={letter} place={place} unit={unit} mark={mark} strong={strong} />
      ))}
    </g>
  );
}

function Badge({
  letter,
  place,
  unit,
  mark,
  strong,
}: Omit<ZoneLettersProps, 'places'> & { readonly place: Place; readonly mark: KeyRow['mark'] }) {
  const [x, y] = place.at;
  const half = Math.max(smallest, Math.min(largest, (place.room / unit) * 0.8)) * unit;
  const letters = [...letter].length;
  const wide = Math.max(half, half * (0.35 + 0.45 * letters));
  const shape = (half * 1.5) / 24;
  const left = x - wide - (mark ? half * 0.7 : 0);
  const width = 2 * wide + (mark ? 1.4 * half : 0);
  return (
    <>
      <rect x={left} y={y - half} width={width} height={2 * half} rx={half} strokeWidth={unit * (strong ? 3 : 1.5)} />
      <text x={left + wide} y={y + half * 0.42} fontSize={half * (letters > 2 ? 1.05 : 1.2)}>
        {letter}
      </text>
      {mark && (
        <path
          className="map-mark"
          d={verdictShapes[mark.verdict]}
          strokeWidth={mark.clearly ? 3.6 : 2.2}
          transform={`translate(${left + 2 * wide - half * 0.4} ${y - half * 0.75}) scale(${shape})`}
        />
      )}
    </>
  );
}
