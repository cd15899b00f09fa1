import { useState } from 'react';
import { w } from '../../words';
import { Button, Section } from '../parts';
import { Fold } from '../parts/Fold';
import { ZoneHold } from './ZoneHold';
import { asks, type ZoneRow } from './zoneRows';

const words = w.holds;

/** Cards that come up at a touch; more is counted. */
const atOnce = 40;

function Cards({ rows }: { readonly rows: readonly ZoneRow[] }) {
  const [many, setMany] = useState(atOnce);
  const rest = rows.length - many;
  return (
    <>
      <ol className="bare hold-zones">
        {rows.slice(0, many).map((row) => (
          <ZoneHold key={row.zone.thing} row={row} />
        ))}
      </ol>
      {rest > 0 && (
        <div className="row">
          <p className="grow">{words.notShown(rest)}</p>
          <div className="not-printed">
            <Button onClick={() => setMany(many + atOnce)}>{words.showMore(Math.min(rest, atOnce))}</Button>
          </div>
        </div>
      )}
    </>
  );
}

/** Every zone with a coating; those of which nothing is asked are put away and counted. */
export function ZonesOfHolds({ rows }: { readonly rows: readonly ZoneRow[] }) {
  const asking = rows.filter(asks);
  const quiet = rows.filter((row) => !asks(row));
  return (
    <Section title={words.zones} lead={words.zonesWhat}>
      {rows.length === 0 && <p className="soft">{words.noZoneHere}</p>}
      {asking.length > 0 && <Cards rows={asking} />}
      {quiet.length > 0 && (
        <Fold show={words.quietFold(quiet.length)} hide={words.quietHide} alsoOnPaper>
          <Cards rows={quiet} />
        </Fold>
      )}
    </Section>
  );
}
