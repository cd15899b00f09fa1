import { useState } from 'react';
import { photoUrl } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Button, PhotoView } from '../parts';
import { useDesk, useQuestion } from '../shell';

const words = w.round.zone;

/** The work from one side, small: where am I on it? */
export function Elevation({ elevations }: { readonly elevations: readonly Thing<'elevation'>[] }) {
  const [at, setAt] = useState(0);
  const shown = elevations[at % Math.max(1, elevations.length)];
  if (!shown) return <p className="elevation none soft">{words.noElevation}</p>;
  return (
    <div className="elevation">
      <Side elevation={shown} key={shown.thing} />
      {elevations.length > 1 && (
        <Button size="round" onClick={() => setAt(at + 1)}>
          {words.otherSide}
        </Button>
      )}
    </div>
  );
}

function Side({ elevation }: { readonly elevation: Thing<'elevation'> }) {
  const desk = useDesk();
  const url = useQuestion(photoUrl(desk, elevation.body.photo, 'whole'));
  return <PhotoView url={url} alt={words.elevation(elevation.body.side)} />;
}
