import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Pattern } from '../parts';
import { verdictShapes } from '../parts/VerdictMark';
import { type KeyRow, rowOf, type Shading } from './shading/shading';

/** The swatch of a row of the key, and the shape of its change where it has one. */
export function RowSwatch({ row: { fill, mark } }: { readonly row: KeyRow }) {
  return (
    <>
      {typeof fill === 'number' ? <Pattern level={fill} /> : <PlainSwatch fill={fill} />}
      {mark && (
        <svg className="key-shape" width="22" height="22" viewBox="0 0 24 24" aria-hidden="true">
          <path d={verdictShapes[mark.verdict]} strokeWidth={mark.clearly ? 3.6 : 2.2} />
        </svg>
      )}
    </>
  );
}

function PlainSwatch({ fill }: { readonly fill: Exclude<KeyRow['fill'], number> }) {
  return (
    <svg className="swatch" width="28" height="28" viewBox="0 0 28 28" aria-hidden="true">
      <rect
        className="swatch-plain"
        x="1"
        y="1"
        width="26"
        height="26"
        rx="4"
        strokeDasharray={fill === 'open' ? '5 3' : undefined}
      />
    </svg>
  );
}

interface MapKeyProps {
  readonly shading: Shading;
  /** Zones of the work: the key counts them, drawn on this side or not. */
  readonly zones: readonly Thing<'zone'>[];
  readonly water: boolean;
}

/** What the colours and hatches mean, in words, with how many zones each stands for. */
export function MapKey({ shading, zones, water }: MapKeyProps) {
  const rows = shading.key.filter(({ fill }) => fill !== 'bare');
  const many = new Map<string, number>();
  for (const zone of zones) {
    const { code } = rowOf(shading, zone.thing);
    many.set(code, (many.get(code) ?? 0) + 1);
  }
  if (rows.length === 0 && !water) return null;
  return (
    <section className="map-key" aria-label={w.zoneMap.key}>
      <ul className="bare">
        {rows.map((row) => (
          <li key={row.code} className={many.has(row.code) ? undefined : 'soft'}>
            <RowSwatch row={row} />
            <span className="grow">{row.word}</span>
            {many.has(row.code) && (
              <span className="map-count soft small figures">{w.zoneMap.count(many.get(row.code) ?? 0)}</span>
            )}
          </li>
        ))}
        {water && (
          <li>
            <svg className="key-water" width="28" height="28" viewBox="0 0 28 28" aria-hidden="true">
              <path className="water-line" d="M3 8Q16 6 20 18" strokeWidth="2.5" />
              <path className="water-head" d="M22 26L15 18L25 15Z" />
            </svg>
            <span className="grow">{w.zoneMap.water}</span>
          </li>
        )}
      </ul>
    </section>
  );
}
