import { useId } from 'react';
import { Link } from 'wouter';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { PatternFill } from '../parts';
import { Arrows } from './Arrows';
import type { PlacedZone } from './placed';
import { rowOf, type Shading } from './shading/shading';
import { useStageUnit } from './stageUnit';
import { ZoneLetters } from './ZoneLetters';

interface MapDrawingProps {
  readonly placed: readonly PlacedZone[];
  /** Undefined while it is worked out: zones stand with their letters and no colour. */
  readonly shading: Shading | undefined;
  readonly runOffs: readonly Thing<'runOff'>[];
  /** Where a touch on a zone leads. */
  readonly to: (zone: string) => string;
}

const levels = [1, 2, 3, 4, 5] as const;

/** The zones over a picture: each a link to its visit, coloured and hatched, its letter on top. */
export function MapDrawing({ placed, shading, runOffs, to }: MapDrawingProps) {
  const id = useId();
  const { ref, unit } = useStageUnit();
  return (
    <g ref={ref} className="map-drawing">
      <defs>
        {levels.map((level) => (
          <PatternFill key={level} id={`${id}${level}`} level={level} scale={1.25 * unit} />
        ))}
      </defs>
      {placed.map(({ zone, path }) => {
        const fill = shading ? rowOf(shading, zone.thing).fill : 'open';
        const said = shading ? shading.of(zone.thing).said || w.zoneMap.open : w.zoneMap.working;
        const level = typeof fill === 'number';
        return (
          <Link
            key={zone.thing}
            href={to(zone.thing)}
            className="map-zone"
            aria-label={w.zoneMap.zoneTold(zone.body.letter, zone.body.name, said)}
          >
            <path className="map-under" d={path} strokeWidth={5 * unit} />
            <path
              className={level ? 'map-fill' : `map-fill ${fill}`}
              d={path}
              fill={level ? `url(#${id}${fill})` : undefined}
              strokeWidth={2 * unit}
              strokeDasharray={fill === 'open' ? `${7 * unit} ${5 * unit}` : undefined}
            />
          </Link>
        );
      })}
      <Arrows runOffs={runOffs} placed={placed} unit={unit} />
      {placed.map(({ zone, letters }) => (
        <ZoneLetters
          key={zone.thing}
          letter={zone.body.letter}
          places={letters}
          unit={unit}
          mark={shading && rowOf(shading, zone.thing).mark}
        />
      ))}
    </g>
  );
}
