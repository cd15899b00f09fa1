import { w } from '../../words';
import { Section } from '../parts';
import { Fold } from '../parts/Fold';
import { LongList } from '../parts/LongList';
import { ZoneHold } from './ZoneHold';
import { asks, type ZoneRow } from './zoneRows';

const words = w.holds;

function Cards({ rows }: { readonly rows: readonly ZoneRow[] }) {
  return <LongList rows={rows} show={(row) => <ZoneHold key={row.zone.thing} row={row} />} className="hold-zones" />;
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
