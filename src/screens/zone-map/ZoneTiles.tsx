import type { SideOnMap } from '../../actions';
import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Section } from '../parts';

const words = w.zoneMap.outline;

interface ZoneTilesProps {
  readonly zones: readonly Thing<'zone'>[];
  readonly side: SideOnMap;
  readonly chosen: string | undefined;
  readonly onChoose: (zone: string) => void;
}

/** All zones in walking order, drawn on this side or not. */
export function ZoneTiles({ zones, side, chosen, onChoose }: ZoneTilesProps) {
  const drawn = zones.filter((zone) => side.outlines.some((one) => one.zone === zone.thing)).length;
  return (
    <Section title={words.zones} lead={words.zonesWhat}>
      <p className="strong">{words.count(drawn, zones.length)}</p>
      <ul className="bare zone-tiles">
        {zones.map((zone) => {
          const { letter, name } = zone.body;
          const outline = side.outlines.find((one) => one.zone === zone.thing)?.outline;
          const state = outline ? (outline.length > 1 ? words.pieces(outline.length) : words.drawn) : words.notDrawn;
          return (
            <li key={zone.thing}>
              <button
                type="button"
                className={outline ? 'zone-tile' : 'zone-tile undrawn'}
                aria-pressed={zone.thing === chosen}
                onClick={() => onChoose(zone.thing)}
              >
                <span className="letter">{letter}</span>
                <span>
                  <span className="zone-tile-name">{name}</span>
                  <span className="zone-tile-state">{state}</span>
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    </Section>
  );
}
