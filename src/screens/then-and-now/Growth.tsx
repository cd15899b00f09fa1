import type { ActiveKind, AreaChange } from '../../engine/change';
import { area, type NameOfThing, w } from '../../words';
import { Section } from '../parts';

const words = w.thenAndNow;
const activeKinds: readonly ActiveKind[] = ['green', 'bare', 'scale'];

/** Half of the width of the drawing: bars to the right grew, to the left shrank. */
const half = 100;
const height = 18;

interface GrowthProps {
  readonly active: Readonly<Record<ActiveKind, AreaChange>>;
  readonly nameOf: NameOfThing;
}

/** Which zones carry the growth, in m2; one measure for all bars, so that they may be held against each other. */
export function Growth({ active, nameOf }: GrowthProps) {
  const shown = activeKinds.filter((kind) => active[kind].contributions.length > 0);
  const most = Math.max(...activeKinds.flatMap((kind) => active[kind].contributions.map(({ m2 }) => Math.abs(m2))));
  return (
    <Section title={words.growth} lead={shown.length > 0 ? words.growthWhat : words.growthNone}>
      {shown.map((kind) => (
        <figure key={kind} className="growth">
          <figcaption className="strong">{words.active[kind]}</figcaption>
          <ul className="bare">
            {active[kind].contributions.map(({ zone, m2 }) => (
              <li key={zone} className="growth-row">
                <span className="growth-zone">{nameOf(zone) ?? words.zone}</span>
                <GrowthBar share={m2 / most} />
                <span className="figures growth-figure">
                  {m2 < 0 ? words.shrankBy(area(-m2)) : words.grewBy(area(m2))}
                </span>
              </li>
            ))}
          </ul>
        </figure>
      ))}
    </Section>
  );
}

/** Whole for growth, open for shrinking, so that grey print tells them apart as well as the side does. */
function GrowthBar({ share }: { readonly share: number }) {
  const width = Math.max(1, Math.abs(share) * (half - 4));
  return (
    <svg className="growth-bar" viewBox={`0 0 ${2 * half} ${height}`} preserveAspectRatio="none" aria-hidden="true">
      <line x1={half} y1="0" x2={half} y2={height} />
      <rect
        className={share < 0 ? 'shrank' : 'grew'}
        x={share < 0 ? half - width : half}
        y="3"
        width={width}
        height={height - 6}
      />
    </svg>
  );
}
