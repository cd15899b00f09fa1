import type { Spot } from '../../engine/colour';
import type { Thing } from '../../engine/record';
import { date, w } from '../../words';
import { Button } from '../parts';
import { DifferenceText } from './DifferenceText';
import { type PlacesOfWork, placeName } from './placeNames';
import { SpotChart } from './SpotChart';
import { SpotTable } from './SpotTable';
import { Swatch, TouchingSwatches } from './Swatch';
import type { SpotRow } from './seriesOfSpot';

const words = w.colour;

interface SpotCardProps {
  readonly spot: Spot;
  /** The latest first. */
  readonly rows: readonly SpotRow[];
  readonly places: PlacesOfWork;
  /** What was done at the spot. */
  readonly done: readonly Thing<'treatment'>[];
  readonly mayWrite: boolean;
  readonly onRead: () => void;
  readonly onAgree: () => void;
  readonly onEdit: (reading: Thing<'reading'>) => void;
}

/** One spot: the last reading beside the agreed colour, both differences, and all its readings. */
export function SpotCard({ spot, rows, places, done, mayWrite, onRead, onAgree, onEdit }: SpotCardProps) {
  const [last] = rows;
  if (!last) return null;
  const { body } = last.reading;
  const read = { value: last.mean.mean, illuminant: body.illuminant, what: words.lastRead(date(body.date)) };
  const held = last.agreed?.agreed.body;
  return (
    <article className="card stack">
      <div>
        <h3>{placeName(places, spot.about)}</h3>
        <p className="soft">{spot.position || words.unnamed}</p>
      </div>
      <div className="colour-spot">
        {held ? (
          <TouchingSwatches
            left={{ value: held.value, illuminant: held.illuminant, what: words.agreedShort }}
            right={read}
          />
        ) : (
          <Swatch {...read} />
        )}
        <DifferenceText
          against={held ? words.fromAgreedNamed(held.name) : words.fromAgreed}
          compared={last.agreed?.compared}
          nothing={words.noAgreed}
        />
        <DifferenceText
          against={last.before ? words.since(date(last.before.earlier.body.date)) : words.sinceBefore}
          compared={last.before?.compared}
          nothing={words.firstReading}
        />
      </div>
      <SpotChart rows={rows} done={done} />
      <SpotTable rows={rows} onEdit={mayWrite ? onEdit : undefined} />
      {mayWrite && (
        <div className="row not-printed">
          <Button onClick={onRead}>{words.readAgain}</Button>
          <Button kind="quiet" onClick={onAgree}>
            {words.agreeOn}
          </Button>
        </div>
      )}
    </article>
  );
}
