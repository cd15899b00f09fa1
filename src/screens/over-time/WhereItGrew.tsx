import type { ActiveArea } from '../../engine/trade';
import { lastSpan, type Trends } from '../../engine/trend';
import { area, date, type NameOfThing, w } from '../../words';
import { Section } from '../parts';
import { SignedBars } from '../parts/charts';

const words = w.overTime;
const kinds: readonly ActiveArea[] = ['green', 'bare', 'scale'];

/** What each zone added from the first to the last round of its unbroken series: treat where the square metres are. */
export function WhereItGrew({ trends, nameOf }: { readonly trends: Trends; readonly nameOf: NameOfThing }) {
  const rows = kinds.map((kind) => ({
    kind,
    changes: trends.zones
      .flatMap(({ zone, active }) => {
        const points = lastSpan(active[kind].series);
        const [first, last] = [points[0], points.at(-1)];
        return first && last && first !== last
          ? [{ zone, m2: last.figure.value - first.figure.value, from: first.day, to: last.day }]
          : [];
      })
      .filter(({ m2 }) => Math.abs(m2) >= 0.005)
      .sort((a, b) => b.m2 - a.m2),
  }));
  const all = rows.flatMap(({ changes }) => changes);
  const most = Math.max(0, ...all.map(({ m2 }) => Math.abs(m2)));
  const from = all.map((row) => row.from).sort()[0];
  const to = all
    .map((row) => row.to)
    .sort()
    .at(-1);
  return (
    <Section title={words.growth} lead={from && to ? words.growthWhat(date(from), date(to)) : words.growthNone}>
      {rows
        .filter(({ changes }) => changes.length > 0)
        .map(({ kind, changes }) => (
          <figure key={kind} className="where-grew">
            <figcaption className="strong">{words.active[kind]}</figcaption>
            <SignedBars
              most={most}
              bothWays={all.some(({ m2 }) => m2 < 0)}
              bars={changes.map(({ zone, m2, from: since }) => ({
                key: zone,
                name: since === from ? (nameOf(zone) ?? zone) : words.sinceBreak(nameOf(zone) ?? zone, date(since)),
                value: m2,
                text: m2 < 0 ? words.shrankBy(area(-m2)) : words.grewBy(area(m2)),
              }))}
            />
          </figure>
        ))}
    </Section>
  );
}
