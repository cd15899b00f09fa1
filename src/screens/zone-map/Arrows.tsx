import type { Thing } from '../../engine/record';
import { arrowBetween } from './arrow';
import type { PlacedZone } from './placed';

interface ArrowsProps {
  readonly runOffs: readonly Thing<'runOff'>[];
  readonly placed: readonly PlacedZone[];
  readonly unit: number;
}

/** Where water runs, between zones that are both drawn on this side. */
export function Arrows({ runOffs, placed, unit }: ArrowsProps) {
  const placeOf = (name: string) => placed.find(({ zone }) => zone.thing === name)?.letters[0]?.at;
  return (
    <g className="map-water">
      {runOffs.map(({ thing, body }) => {
        const from = placeOf(body.fromZone);
        const to = placeOf(body.toZone);
        const arrow = from && to && arrowBetween(from, to, 19 * unit, 13 * unit);
        if (!arrow) return null;
        return (
          <g key={thing}>
            <path className="water-under" d={`${arrow.line}${arrow.head}`} strokeWidth={6.5 * unit} />
            <path className="water-line" d={arrow.line} strokeWidth={2.5 * unit} />
            <path className="water-head" d={arrow.head} />
          </g>
        );
      })}
    </g>
  );
}
