import type { ActiveKind, AreaChange } from '../../engine/change';
import { area, type NameOfThing, w } from '../../words';
import { FigureText, Section } from '../parts';
import { VerdictMark } from '../parts/VerdictMark';

const words = w.thenAndNow;
const activeKinds: readonly ActiveKind[] = ['green', 'bare', 'scale'];

/** Width and height of a drawing, in its own units. */
const width = 200;
const height = 18;
const margin = 4;

interface GrowthProps {
  readonly active: Readonly<Record<ActiveKind, AreaChange>>;
  readonly nameOf: NameOfThing;
}

/** Which zones carry the growth, in m2; one measure for all bars, so that they may be held against each other. */
export function Growth({ active, nameOf }: GrowthProps) {
  const shown = activeKinds.filter((kind) => active[kind].contributions.length > 0);
  const most = Math.max(...activeKinds.flatMap((kind) => active[kind].contributions.map(({ m2 }) => Math.abs(m2))));
  const shrinks = activeKinds.some((kind) => active[kind].contributions.some(({ m2 }) => m2 < 0));
  return (
    <Section
      title={words.growth}
      lead={shown.length === 0 ? words.growthNone : shrinks ? words.growthBoth : words.growthWhat}
    >
      {shown.map((kind) => (
        <figure key={kind} className="growth">
          <figcaption className="growth-head">
            <span className="strong">{words.active[kind]}:</span> {words.difference}{' '}
            <FigureText figure={active[kind].difference} as="m2" />{' '}
            <VerdictMark verdict={active[kind].verdict} clearly={active[kind].clearly} />
          </figcaption>
          <ul className="bare">
            {active[kind].contributions.map(({ zone, m2 }) => (
              <li key={zone} className="growth-row">
                <span className="growth-zone">{nameOf(zone) ?? words.zone}</span>
                <GrowthBar share={m2 / most} from={shrinks ? width / 2 : margin} />
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

interface GrowthBarProps {
  /** Of the largest change on the page, -1 to 1. */
  readonly share: number;
  /** Where "no change" stands: in the middle where anything shrank, else at the left. */
  readonly from: number;
}

/** Whole for growth, open for shrinking, so that grey print tells them apart as well as the side does. */
function GrowthBar({ share, from }: GrowthBarProps) {
  const long = Math.max(1, Math.abs(share) * (width - from - margin));
  return (
    <svg className="growth-bar" viewBox={`0 0 ${width} ${height}`} preserveAspectRatio="none" aria-hidden="true">
      <line x1={from} y1="0" x2={from} y2={height} />
      <rect
        className={share < 0 ? 'shrank' : 'grew'}
        x={share < 0 ? from - long : from}
        y="3"
        width={long}
        height={height - 6}
      />
    </svg>
  );
}
