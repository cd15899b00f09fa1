import type { Thing } from '../../engine/record';
import { w } from '../../words';
import { Pattern } from '../parts';
import { verdictShapes } from '../parts/VerdictMark';
import { type Fill, type KeyRow, rowOf, type Shading } from './shading/shading';

/** A swatch of a row of the key, steps of the scale and those without. */
export function FillSwatch({ fill }: { readonly fill: Fill }) {
  if (typeof fill === 'number') return <Pattern level={fill} />;
  return (
    <svg className="swatch" width="28" height="28" viewBox="0 0 28 28" aria-hidden="true">
      <rect
        className={`swatch-${fill}`}
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

function ChangeShape({ mark }: { readonly mark: NonNullable<KeyRow['mark']> }) {
  return (
    <svg className="key-shape" width="22" height="22" viewBox="0 0 24 24" aria-hidden="true">
      <path d={verdictShapes[mark.verdict]} strokeWidth={mark.clearly ? 3.6 : 2.2} />
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
  const many = new Map<string, number>();
  for (const zone of zones) {
    const { code } = rowOf(shading, zone.thing);
    many.set(code, (many.get(code) ?? 0) + 1);
  }
  return (
    <section className="map-key" aria-label={w.zoneMap.key}>
      <ul className="bare">
        {shading.key.map(({ code, fill, word, mark }) => (
          <li key={code} className={many.has(code) ? undefined : 'soft'}>
            <FillSwatch fill={fill} />
            {mark && <ChangeShape mark={mark} />}
            <span className="grow">{word}</span>
            {many.has(code) && <span className="soft small figures">{w.zoneMap.count(many.get(code) ?? 0)}</span>}
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
