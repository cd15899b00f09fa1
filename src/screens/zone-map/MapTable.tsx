import { Link } from 'wouter';
import { areaOn, type Thing } from '../../engine/record';
import { area, w } from '../../words';
import { pathTo } from '../shell';
import { RowSwatch } from './MapKey';
import { rowOf, type ShadeName, type Shading } from './shading/shading';

const words = w.zoneMap;

interface MapTableProps {
  readonly zones: readonly Thing<'zone'>[];
  readonly shading: Shading | undefined;
  readonly shade: ShadeName;
  readonly today: string;
  readonly to: (zone: string) => string;
  /** Zones drawn on the side that is shown; left out where no side is. */
  readonly drawn?: ReadonlySet<string>;
  /** The photo of that side, to measure on. */
  readonly photo?: string;
  readonly visits: boolean;
}

/** The same as the map, in words: each zone, what is shown of it, and where it leads. */
export function MapTable({ zones, shading, shade, today, to, drawn, photo, visits }: MapTableProps) {
  const told = shade !== 'outlines';
  return (
    <table className="plain-table map-table">
      <caption className="unseen">{words.table}</caption>
      <thead>
        <tr>
          <th scope="col">{words.columns.zone}</th>
          {told && <th scope="col">{words.shade[shade]}</th>}
          <th scope="col" className="of-number map-area">
            {words.columns.area}
          </th>
          {photo && (
            <th scope="col" className="not-printed">
              {words.columns.measure}
            </th>
          )}
        </tr>
      </thead>
      <tbody>
        {zones.map((zone) => {
          const { letter, name } = zone.body;
          return (
            <tr key={zone.thing}>
              <th scope="row">
                <Link href={to(zone.thing)} className="map-row-zone">
                  <span className="letter">{letter}</span> <span className="map-row-name">{name}</span>
                  <span className="unseen"> {visits ? words.openVisit : words.open}</span>
                </Link>
                {drawn && !drawn.has(zone.thing) && <span className="map-row-note soft small">{words.noOutline}</span>}
              </th>
              {told && (
                <td>
                  {shading ? (
                    <span className="map-said">
                      <RowSwatch row={rowOf(shading, zone.thing)} />
                      <span>{shading.of(zone.thing).said}</span>
                    </span>
                  ) : (
                    <span className="soft">{words.working}</span>
                  )}
                </td>
              )}
              <td className="of-number map-area">{area(areaOn(zone, today).m2)}</td>
              {photo && (
                <td className="not-printed">
                  {drawn?.has(zone.thing) && (
                    <Link
                      href={pathTo.measure(photo, zone.thing)}
                      className="button quiet"
                      aria-label={words.measureZone(letter)}
                    >
                      {words.measure}
                    </Link>
                  )}
                </td>
              )}
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
