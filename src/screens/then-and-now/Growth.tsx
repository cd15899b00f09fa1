import type { ActiveKind, AreaChange } from '../../engine/change';
import { area, type NameOfThing, w } from '../../words';
import { FigureText, Section } from '../parts';
import { SignedBars } from '../parts/charts';
import { VerdictMark } from '../parts/VerdictMark';

const words = w.thenAndNow;
const activeKinds: readonly ActiveKind[] = ['green', 'bare', 'scale'];

interface GrowthProps {
  readonly active: Readonly<Record<ActiveKind, AreaChange>>;
  readonly nameOf: NameOfThing;
}

/** Which zones carry the growth, in m2; one measure for all bars, so that they may be held against each other. */
export function Growth({ active, nameOf }: GrowthProps) {
  const shown = activeKinds.filter((kind) => active[kind].contributions.length > 0);
  const most = Math.max(0, ...activeKinds.flatMap((kind) => active[kind].contributions.map(({ m2 }) => Math.abs(m2))));
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
          <SignedBars
            most={most}
            bothWays={shrinks}
            bars={active[kind].contributions.map(({ zone, m2 }) => ({
              key: zone,
              name: nameOf(zone) ?? words.zone,
              value: m2,
              text: m2 < 0 ? words.shrankBy(area(-m2)) : words.grewBy(area(m2)),
            }))}
          />
        </figure>
      ))}
    </Section>
  );
}
