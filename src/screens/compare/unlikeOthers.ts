import type { PhotoOfWork } from '../../actions';
import type { BodyOf } from '../../engine/record';

const told = ['light', 'wet', 'washed'] as const;
type Told = (typeof told)[number];

/** What one photo was taken in that most of the others, or the rule of the station, were not. */
export interface Unlike {
  /** Facts of its own, against most of the others. */
  readonly others: readonly string[];
  /** Against the station's own rule for light and water. */
  readonly rule: readonly string[];
  readonly notSaid: boolean;
}

const commonest = (rows: readonly PhotoOfWork[], what: Told): string | undefined => {
  const counts = new Map<string, number>();
  for (const { photo } of rows) {
    const value = photo.body[what];
    if (value) counts.set(value, (counts.get(value) ?? 0) + 1);
  }
  const [first, second] = [...counts].sort((a, b) => b[1] - a[1]);
  // Half and half has no exception.
  return first && first[1] > (second?.[1] ?? 0) ? first[0] : undefined;
};

export const unlikeOthers = (
  row: PhotoOfWork,
  rows: readonly PhotoOfWork[],
  station: Pick<BodyOf<'station'>, 'light' | 'wet'>,
): Unlike => {
  const own = row.photo.body;
  const rule: Partial<Record<Told, string | undefined>> = {
    light: station.light === 'any' ? undefined : station.light,
    wet: station.wet,
  };
  const against = (most: (what: Told) => string | undefined) =>
    told.flatMap((what) => {
      const [said, usual] = [own[what], most(what)];
      return said && usual && said !== usual ? [said] : [];
    });
  const byRule = against((what) => rule[what]);
  return {
    rule: byRule,
    others: against((what) => commonest(rows, what)).filter((fact) => !byRule.includes(fact)),
    notSaid: !own.light && !own.wet,
  };
};
