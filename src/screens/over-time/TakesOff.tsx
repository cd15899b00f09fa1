import { contributionsOf, type NeedOf, workContributions } from '../../engine/condition';
import type { BodyOf } from '../../engine/record';
import { kindOf } from '../../engine/trade';
import { number, w } from '../../words';
import { Section } from '../parts';
import { SignedBars } from '../parts/charts';
import { Fold } from '../parts/Fold';

const words = w.overTime;
/** Shown before anything is opened: the rest is small. */
const first = 8;

interface TakesOffProps {
  readonly need: NeedOf | null;
  readonly only: string | undefined;
  readonly letters: ReadonlyMap<string, BodyOf<'zone'>>;
}

/** What each finding takes off the index of the last round: the most first. */
export function TakesOff({ need, only, letters }: TakesOffProps) {
  const zones = need?.score.zones.filter(({ zone }) => only === undefined || zone === only) ?? [];
  const zone = only === undefined ? undefined : zones[0];
  const parts = zone ? contributionsOf(zone) : workContributions(zones);
  const index = zone ? zone.value : (need?.score.value ?? null);
  const bars = parts.map(({ finding, points }) => {
    const kind = kindOf(finding.kind)?.name ?? finding.kind;
    return {
      key: `${finding.zone} ${finding.kind} ${finding.origin}`,
      name: zone ? kind : words.inZone(kind, letters.get(finding.zone)?.letter ?? '?'),
      value: points,
      text: words.points(number(points, points < 1 ? 2 : 1)),
    };
  });
  const most = Math.max(0, ...bars.map(({ value }) => value));
  const rest = bars.slice(first);
  return (
    <Section
      title={words.takesOff}
      lead={index === null || bars.length === 0 ? words.takesOffNone : words.takesOffWhat(number(100 - index, 1))}
    >
      {bars.length > 0 && <SignedBars bars={bars.slice(0, first)} most={most} />}
      {rest.length > 0 && (
        <Fold show={words.more(rest.length)} hide={words.moreHide} alsoOnPaper>
          <SignedBars bars={rest} most={most} />
        </Fold>
      )}
    </Section>
  );
}
