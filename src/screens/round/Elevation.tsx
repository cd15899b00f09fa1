import { useState } from 'react';
import { photoUrl, type Side, sidesOf } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Button, PhotoView, stageHeight, stagePath, stageWidth } from '../parts';
import { useDesk, useQuestion } from '../shell';

const words = w.round.zone;

interface ElevationProps {
  readonly sculpture: string;
  /** The zone that is looked at: marked where it is drawn. */
  readonly zone: string;
  readonly elevations: readonly Thing<'elevation'>[];
}

const showsZone = (side: Side | undefined, zone: string): boolean =>
  side?.outlines.some((one) => one.zone === zone) === true;

/** The work from one side, small, first the one the zone is drawn on: where am I on it? */
export function Elevation({ sculpture, zone, elevations }: ElevationProps) {
  const [chosen, setChosen] = useState<number>();
  const sides = useQuestion(sidesOf(useDesk(), sculpture));
  const sideOf = (elevation: Thing<'elevation'>) => sides?.find((one) => one.elevation.thing === elevation.thing);
  const drawn = elevations.findIndex((elevation) => showsZone(sideOf(elevation), zone));
  const at = chosen ?? Math.max(0, drawn);
  const shown = elevations[at % Math.max(1, elevations.length)];
  if (!shown) return <p className="elevation none soft">{words.noElevation}</p>;
  return (
    <div className="elevation">
      <Picture elevation={shown} side={sideOf(shown)} zone={zone} key={shown.thing} />
      {elevations.length > 1 && (
        <Button size="round" onClick={() => setChosen(at + 1)}>
          {words.otherSide}
        </Button>
      )}
    </div>
  );
}

interface PictureProps {
  readonly elevation: Thing<'elevation'>;
  readonly side: Side | undefined;
  readonly zone: string;
}

function Picture({ elevation, side, zone }: PictureProps) {
  const url = useQuestion(photoUrl(useDesk(), elevation.body.photo, 'whole'));
  const { side: named } = elevation.body;
  const alt = showsZone(side, zone) ? words.elevationMarked(named) : words.elevation(named);
  const lines = side?.size && side.outlines.length > 0 ? <Lines side={side} size={side.size} zone={zone} /> : null;
  // Without its bytes the outlines alone still say where the zone lies.
  if (url === null && lines)
    return (
      <div className="photo" role="img" aria-label={`${alt}. ${w.parts.photoElsewhere}`}>
        {lines}
      </div>
    );
  return (
    <div className="elevation-picture">
      <PhotoView url={url} alt={alt} />
      {lines}
    </div>
  );
}

interface LinesProps {
  readonly side: Side;
  readonly size: NonNullable<Side['size']>;
  readonly zone: string;
}

/** All outlines thin, the present zone heavy and bright. */
function Lines({ side, size, zone }: LinesProps) {
  return (
    <svg className="elevation-lines" viewBox={`0 0 ${stageWidth} ${stageHeight(size)}`} aria-hidden="true">
      {side.outlines.map(({ zone: other, outline }) =>
        other === zone ? null : <path key={other} className="line-other" d={stagePath(outline, size)} />,
      )}
      {side.outlines.map(({ zone: own, outline }) => {
        if (own !== zone) return null;
        const d = stagePath(outline, size);
        return (
          <g key={own}>
            <path className="line-under" d={d} />
            <path className="line-here" d={d} />
          </g>
        );
      })}
    </svg>
  );
}
